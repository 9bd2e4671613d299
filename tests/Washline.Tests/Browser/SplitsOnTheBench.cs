using System.Text.RegularExpressions;
using Microsoft.Playwright;
using Washline.Drinks;
using Washline.Measures;
using Washline.Tests.Fitting;

namespace Washline.Tests.Browser;

[Collection(InTheBrowser.Name)]
public sealed class SplitsOnTheBench(Chromium chromium)
{
    private const string Both = "Pier 9 aged rum and Harbour Wall";

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task A_line_of_two_bottles_is_nudged_as_one_poured_from_one_and_split_again(bool script)
    {
        await using var house = await OpenHouse.Open(demo: true);
        var overproof = new Bottle { Name = "Harbour Wall", Kind = Kinds.Catalogue["overproof-rum"], Strength = Strength.FromPercent(75) };
        var spec = DemoHome.Read("Harbour Sour\n\n2 oz aged rum (55 %)\n1 oz lime juice\n3/4 oz simple syrup\n\nmethod: shake 10 s\nice: none\nglass: coupe\n");
        house.File.Change(bar => bar with { Bottles = [.. bar.Bottles, overproof], Specs = [.. bar.Specs, spec] });
        var page = await chromium.Page(house, script);
        await page.GotoAsync("/spec/Harbour%20Sour");
        var (amount, bottle) = (page.Locator(".home b").First, page.Locator(".home summary").First);
        await Assertions.Expect(amount).ToHaveTextAsync("1¼ oz + ¾ oz");
        await Assertions.Expect(bottle).ToHaveTextAsync(Both);
        await Assertions.Expect(page.GetByText("40 % alone would be weaker: Harbour Wall brings it to 53.3 %")).ToBeVisibleAsync();

        await page.GetByRole(AriaRole.Link, new() { NameRegex = new Regex("^more aged rum") }).ClickAsync();
        await Assertions.Expect(amount).ToHaveTextAsync("1¼ oz + 1 oz");
        await Assertions.Expect(bottle).ToHaveTextAsync(Both);
        await page.GetByRole(AriaRole.Link, new() { NameRegex = new Regex("^less aged rum") }).ClickAsync();
        await Assertions.Expect(amount).ToHaveTextAsync("1¼ oz + ¾ oz");

        await Pour("Pier 9 aged rum");
        await Assertions.Expect(amount).ToHaveTextAsync("2 oz");
        await Pour(Both);
        await Assertions.Expect(amount).ToHaveTextAsync("1¼ oz + ¾ oz");
        await Assertions.Expect(page.Locator(".pours a[aria-current=true]")).ToContainTextAsync("closest");

        async Task Pour(string name)
        {
            await bottle.ClickAsync();
            await page.GetByLabel("bottle for aged rum").SelectOptionAsync(new SelectOptionValue { Label = name });
            await page.GetByRole(AriaRole.Button, new() { Name = "Pour it" }).First.ClickAsync();
            await Assertions.Expect(bottle).ToHaveTextAsync(name);
        }
    }
}

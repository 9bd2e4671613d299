using Microsoft.Playwright;

namespace Washline.Tests.Browser;

[Collection(InTheBrowser.Name)]
public sealed class TheIceIsAskedOnce(Chromium chromium)
{
    [Theory]
    [InlineData(true, "wet", true)]
    [InlineData(false, "from the freezer", false)]
    public async Task The_bench_asks_what_ice_it_is_keeps_the_answer_and_the_pour_and_asks_no_more(bool script, string answer, bool wet)
    {
        await using var house = await OpenHouse.Open(demo: true);
        var page = await chromium.Page(house, script);
        await page.GotoAsync("/spec/Daiquiri");
        var before = await page.Locator(".home b").Nth(1).InnerTextAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "more lime juice" }).ClickAsync();
        await Assertions.Expect(page.Locator(".home b").Nth(1)).Not.ToHaveTextAsync(before);
        var amount = await page.Locator(".home b").Nth(1).InnerTextAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = answer, Exact = true }).ClickAsync();
        await Assertions.Expect(page.GetByText("Is your ice wet")).ToHaveCountAsync(0);
        await Assertions.Expect(page.Locator(".home b").Nth(1)).ToHaveTextAsync(amount);
        Assert.Equal(wet, house.File.Load().Settings.IceWet);
        await page.GotoAsync("/spec/Manhattan");
        await Assertions.Expect(page.GetByText("Is your ice wet")).ToHaveCountAsync(0);
    }
}

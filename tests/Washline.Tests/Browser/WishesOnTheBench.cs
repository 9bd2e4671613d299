using System.Globalization;
using System.Text.RegularExpressions;
using Microsoft.Playwright;
using Washline.App.Pages;

namespace Washline.Tests.Browser;

[Collection(InTheBrowser.Name)]
public sealed class WishesOnTheBench(Chromium chromium)
{
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task A_wish_moves_the_drink_stays_through_a_nudge_and_goes_again(bool script)
    {
        await using var house = await OpenHouse.Open(demo: true);
        var page = await chromium.Page(house, script);
        await page.GotoAsync("/spec/Whiskey%20Sour");
        var sugar = await Sugar(page);
        await page.Locator(".wishes summary").ClickAsync();
        await page.GetByLabel("drier").CheckAsync();
        await page.GetByLabel("the volume").CheckAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Find it" }).ClickAsync();
        await Assertions.Expect(page.Locator(".wishes summary")).ToHaveTextAsync("Wished: keep the volume, drier");
        Assert.InRange(await Sugar(page), 0.5 * sugar, 0.87 * sugar);
        await Assertions.Expect(page.GetByText("from the drink as wished").First).ToBeVisibleAsync();

        await page.GetByRole(AriaRole.Link, new() { NameRegex = new Regex("^more lemon") }).ClickAsync();
        await Assertions.Expect(page.Locator(".pours .own")).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator(".wishes summary")).ToHaveTextAsync("Wished: keep the volume, drier");
        if (!await page.GetByRole(AriaRole.Link, new() { Name = "Wish for nothing" }).IsVisibleAsync()) await page.Locator(".wishes summary").ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Wish for nothing" }).ClickAsync();
        await Assertions.Expect(page.Locator(".wishes summary")).ToHaveTextAsync("Wishes");
        Assert.Equal(sugar, await Sugar(page));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task With_the_balance_held_a_nudge_finds_the_other_amounts_anew_until_the_line_is_let_go(bool script)
    {
        await using var house = await OpenHouse.Open(demo: true);
        var page = await chromium.Page(house, script);
        await page.GotoAsync("/spec/Daiquiri");
        await page.Locator(".wishes summary").ClickAsync();
        await page.GetByLabel("hold the balance").CheckAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Find it" }).ClickAsync();
        await Assertions.Expect(page.Locator(".wishes summary")).ToHaveTextAsync("Wished: hold the balance");
        var amounts = page.Locator(".home b");
        var before = await amounts.AllInnerTextsAsync();
        for (var i = 0; i < 4; i++)
        {
            var was = await amounts.Nth(0).InnerTextAsync();
            await page.GetByRole(AriaRole.Link, new() { NameRegex = new Regex("^more light rum") }).ClickAsync();
            await Assertions.Expect(amounts.Nth(0)).Not.ToHaveTextAsync(was);
        }

        var after = await amounts.AllInnerTextsAsync();
        Assert.True(before[1] != after[1] || before[2] != after[2], $"Lime and syrup stayed at {after[1]} and {after[2]}.");
        await page.GetByRole(AriaRole.Link, new() { Name = "let light rum go again" }).ClickAsync();
        await Assertions.Expect(page.GetByText("held here")).ToHaveCountAsync(0);
        Assert.Equal(before, await amounts.AllInnerTextsAsync());
    }

    [Fact]
    public async Task What_cannot_be_kept_together_is_said_and_the_nearest_is_shown()
    {
        await using var house = await OpenHouse.Open(demo: true);
        var page = await chromium.Page(house);
        await page.GotoAsync("/spec/Mai%20Tai?without=tree+nuts&keep=volume");
        await Assertions.Expect(page.Locator(".refused")).ToContainTextAsync("What stands in the way: without tree nuts.");
        await Assertions.Expect(page.Locator(".home b").First).ToBeVisibleAsync();
    }

    [Fact]
    public async Task Every_way_stands_on_one_axis_to_scale_and_a_tap_pours_it()
    {
        await using var house = await OpenHouse.Open(demo: true);
        var page = await chromium.Page(house);
        await page.GotoAsync("/spec/Breakwater%20Sour");
        var rows = page.Locator("table.all tbody tr");
        Assert.True(await rows.CountAsync() >= 4);
        var drawn = new List<(double X, double Jnd)>();
        foreach (var row in await rows.AllAsync())
        {
            if (await row.Locator("circle").CountAsync() == 0) continue;
            var x = double.Parse((await row.Locator("circle").GetAttributeAsync("cx"))!.TrimEnd('%'), CultureInfo.InvariantCulture);
            drawn.Add((x, double.Parse(await row.Locator(".now b").InnerTextAsync(), CultureInfo.InvariantCulture)));
        }

        // The same run of the axis for each JND, to what the printed tenth may hide.
        foreach (var (x, jnd) in drawn) Assert.Equal((x - 3) / 93 * 4, jnd, 0.051);
        Assert.Equal(drawn.OrderBy(d => d.X), drawn);
        await rows.GetByRole(AriaRole.Link, new() { NameRegex = new Regex("^with ") }).First.ClickAsync();
        await Assertions.Expect(page.Locator("table.all [aria-current]")).ToHaveTextAsync(new Regex("^with "));
        await Assertions.Expect(page.GetByText("Nearer: with overproof rum of 63 %")).ToBeVisibleAsync();
    }

    [Theory]
    [InlineData("?keep=99999999999&keep=-1&keep=0&sweet=%3Cb%3E&drinks=1e99&drinks=&changes=-4&budget=NaN&useup=%3Cscript%3E&without=%3Cscript%3E&held=7&balance=hold&pour=~~&pour=x~-3")]
    [InlineData("?useup=nothing+of+the+kind&keep=volume")]
    public async Task What_makes_no_sense_in_an_address_is_left_out_or_said_and_never_run(string query)
    {
        await using var house = await OpenHouse.Open(demo: true);
        var page = await house.Get(BenchAddress.Of("Daiquiri") + query);
        Assert.Contains("<h1>Daiquiri</h1>", page, StringComparison.Ordinal);
        Assert.DoesNotContain("<script>", page.Replace("<script src", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    private static async Task<double> Sugar(IPage page) =>
        double.Parse((await page.Locator(".figures div", new() { HasText = "sugar" }).Locator("dd").InnerTextAsync()).Split(' ')[0], CultureInfo.InvariantCulture);
}

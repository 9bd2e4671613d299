using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Washline.App.Pages;

namespace Washline.Tests.Browser;

/// <summary>Axe finds nothing, and nothing scrolls sideways: every page, by day and by night, on a phone and on a desk.</summary>
/// <remarks>With WASHLINE_PICTURES=FOLDER each page is photographed there as well, and more drinks with it.</remarks>
[Collection(InTheBrowser.Name)]
public sealed class EveryPageCanBeRead(Chromium chromium)
{
    private static readonly string? Pictures = Environment.GetEnvironmentVariable("WASHLINE_PICTURES");

    private static readonly AxeRunOptions Contrast = new() { RunOnly = RunOnlyOptions.Rules("color-contrast") };

    private static readonly (string Name, string Path)[] Pages =
    [
        ("specs", "/"), ("bench", "/spec/Breakwater%20Sour"), ("foam", "/spec/White%20Lady?as=straight"), ("out-of-reach", "/spec/Kiln%20and%20Palm"), ("bar", "/bar"), ("tonight", "/tonight"), ("read", "/read"), ("nowhere", "/nowhere"),
    ];

    private static readonly (string Name, string Path)[] More =
    [
        ("straight", "/spec/Whiskey%20Sour?as=straight"), ("martini", "/spec/Martini"), ("swizzle", "/spec/Gasworks%20Swizzle"), ("negroni", "/spec/Negroni"), ("collins", "/spec/Tom%20Collins"), ("no-blender", "/spec/Frozen%20Daiquiri"),
    ];

    [Fact]
    public async Task Nothing_stands_in_the_way_on_any_page()
    {
        await using var house = await OpenHouse.Open(demo: true);
        var page = await chromium.Page(house);
        foreach (var (name, path) in Pictures is null ? Pages : [.. Pages, .. More])
        {
            await page.GotoAsync(path);
            await Look(page, name);
        }
    }

    [Fact]
    public async Task Nothing_stands_in_the_way_where_a_person_has_just_done_something()
    {
        await using var house = await OpenHouse.Open(demo: true);
        await using var empty = await OpenHouse.Open();
        var page = await chromium.Page(house);
        await page.GotoAsync("/read");
        await page.GetByLabel("The spec").FillAsync("Slip\n\n60 ml bourbn\n2 ozz lemon juice\n\nshake it\n");
        await page.GetByRole(AriaRole.Button, new() { Name = "Read it" }).ClickAsync();
        await page.Locator(".wrong").First.WaitForAsync();
        await Look(page, "problems");
        await page.GotoAsync("/read");
        await page.GetByLabel("or a file").SetInputFilesAsync(Directory.GetFiles(House.Path("tests", "Washline.Tests", "Corpus", "ours", "spoken"), "*.vtt").Order(StringComparer.Ordinal).First());
        await page.GetByRole(AriaRole.Button, new() { Name = "Read it" }).ClickAsync();
        await Assertions.Expect(page.GetByText("Read as somebody talking, with times.")).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator(".fields .from").First).ToHaveTextAsync(new System.Text.RegularExpressions.Regex(@"^\d+:\d\d"));
        await Look(page, "talk");
        await page.GotoAsync("/read");
        await page.GetByLabel("The spec").FillAsync("Night Ferry: aged rum, lime, zorblatt, mint");
        await page.GetByRole(AriaRole.Button, new() { Name = "Read it" }).ClickAsync();
        await Assertions.Expect(page.GetByLabel("“zorblatt” stands for")).ToBeVisibleAsync();
        await Look(page, "menu");
        await page.GetByLabel("“zorblatt” stands for").FillAsync("falernum");
        await page.GetByRole(AriaRole.Button, new() { Name = "Place it" }).ClickAsync();
        await Assertions.Expect(page.GetByLabel("“zorblatt” stands for")).ToHaveCountAsync(0);
        Assert.Equal("falernum", Assert.Single(house.File.Load().Words).Kind.Id);
        await page.GotoAsync(BenchAddress.Of("Breakwater Sour", [("Pier 9 aged rum", 90)]));
        await page.Locator("summary").First.ClickAsync();
        await Look(page, "chooser");
        await page.GotoAsync("/spec/Last%20Tram?sweet=less&balance=hold");
        await page.Locator(".wishes summary").ClickAsync();
        await page.GetByLabel("hold the balance").WaitForAsync();
        await Look(page, "wishes");
        await page.GotoAsync(empty.Address);
        await Look(page, "welcome");
    }

    private static async Task Look(IPage page, string name)
    {
        foreach (var (dark, width, height) in new[] { (false, 1280, 900), (true, 1280, 900), (true, 390, 844), (false, 390, 844) })
        {
            await page.SetViewportSizeAsync(width, height);
            await page.EmulateMediaAsync(new() { ColorScheme = dark ? ColorScheme.Dark : ColorScheme.Light, ReducedMotion = ReducedMotion.Reduce });
            // Night changes nothing but colours.
            var found = dark ? await page.RunAxe(Contrast) : await page.RunAxe();
            Assert.True(found.Violations.Length == 0, $"{name}, {(dark ? "dark" : "light")}, {width} px wide: " + string.Join("\n", found.Violations.Select(v => $"{v.Id}: {v.Help}: {string.Join(" | ", v.Nodes.Select(n => n.Html))}")));
            var (wide, seen) = (await page.EvaluateAsync<int>("document.documentElement.scrollWidth"), await page.EvaluateAsync<int>("innerWidth"));
            Assert.True(wide <= seen, $"{name} is {wide} px wide on a screen of {seen}.");
            if (Pictures is { Length: > 0 })
                await page.ScreenshotAsync(new() { Path = Path.Combine(Pictures, $"{name}-{(width < 600 ? "phone" : "desk")}-{(dark ? "dark" : "light")}.png"), FullPage = true });
        }
    }
}

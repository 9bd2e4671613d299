using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Washline.App.Pages;

namespace Washline.Tests.Browser;

/// <summary>Axe finds nothing, and nothing scrolls sideways: every page, by day and by night, on a phone and on a desk.</summary>
/// <remarks>With WASHLINE_PICTURES=FOLDER each page is photographed there as well.</remarks>
[Collection(InTheBrowser.Name)]
public sealed class EveryPageCanBeRead(Chromium chromium)
{
    private static readonly (string Name, string Path)[] Pages =
    [
        ("specs", "/"), ("bench", "/spec/Breakwater%20Sour"), ("straight", "/spec/Whiskey%20Sour?as=straight"), ("martini", "/spec/Martini"), ("swizzle", "/spec/Gasworks%20Swizzle"),
        ("negroni", "/spec/Negroni"), ("collins", "/spec/Tom%20Collins"), ("out-of-reach", "/spec/Kiln%20and%20Palm"), ("bar", "/bar"), ("read", "/read"), ("nowhere", "/nowhere"),
    ];

    public static TheoryData<bool, int, int> Ways => new() { { false, 1280, 900 }, { true, 1280, 900 }, { false, 390, 844 }, { true, 390, 844 } };

    [Theory]
    [MemberData(nameof(Ways))]
    public async Task Nothing_stands_in_the_way(bool dark, int width, int height)
    {
        await using var house = await OpenHouse.Open(demo: true);
        await using var empty = await OpenHouse.Open();
        var page = await chromium.Page(house, dark: dark, width: width, height: height);
        foreach (var (name, path) in Pages)
        {
            await page.GotoAsync(path);
            await Look(page, name, dark, width);
        }

        await page.GotoAsync("/read");
        await page.GetByLabel("The spec").FillAsync("Slip\n\n60 ml bourbn\n2 ozz lemon juice\n\nshake it\n");
        await page.GetByRole(AriaRole.Button, new() { Name = "Read it" }).ClickAsync();
        await page.Locator(".wrong").First.WaitForAsync();
        await Look(page, "problems", dark, width);
        await page.GotoAsync(BenchAddress.Of("Breakwater Sour", [("Pier 9 aged rum", 90)]));
        await page.Locator("summary").First.ClickAsync();
        await Look(page, "chooser", dark, width);
        await page.GotoAsync(empty.Address);
        await Look(page, "welcome", dark, width);
    }

    private static async Task Look(IPage page, string name, bool dark, int width)
    {
        var found = await page.RunAxe();
        Assert.True(found.Violations.Length == 0, $"{name}, {(dark ? "dark" : "light")}, {width} px wide: " + string.Join("\n", found.Violations.Select(v => $"{v.Id}: {v.Help}: {string.Join(" | ", v.Nodes.Select(n => n.Html))}")));
        var (wide, seen) = (await page.EvaluateAsync<int>("document.documentElement.scrollWidth"), await page.EvaluateAsync<int>("innerWidth"));
        Assert.True(wide <= seen, $"{name} is {wide} px wide on a screen of {seen}.");
        if (Environment.GetEnvironmentVariable("WASHLINE_PICTURES") is { Length: > 0 } folder)
            await page.ScreenshotAsync(new() { Path = Path.Combine(folder, $"{name}-{(width < 600 ? "phone" : "desk")}-{(dark ? "dark" : "light")}.png"), FullPage = true });
    }
}

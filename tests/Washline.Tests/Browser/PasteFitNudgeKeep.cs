using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Washline.Tests.Browser;

[Collection(InTheBrowser.Name)]
public sealed class PasteFitNudgeKeep(Chromium chromium)
{
    private const string WithSlips = "Harbour Test Sour\n\n60 ml rye whisky (50 %)\n22.5 ml lemon juce, fresh\n15 ozz simple syrup\n\nmethod: shake 12 s\nglass: coupe\npass on: yes\n";

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task A_pasted_spec_is_mended_fitted_nudged_and_kept_with_script_and_without(bool script)
    {
        await using var house = await OpenHouse.Open(demo: true);
        var page = await chromium.Page(house, script);
        await page.GotoAsync("/read");
        await page.GetByLabel("The spec").FillAsync(WithSlips);
        await page.GetByRole(AriaRole.Button, new() { Name = "Read it" }).ClickAsync();

        var wrong = page.Locator(".lined .wrong");
        await Assertions.Expect(wrong).ToHaveCountAsync(2);
        await Assertions.Expect(wrong.First.Locator("code")).ToContainTextAsync("22.5 ml lemon juce, fresh");
        await Assertions.Expect(wrong.First.Locator(".n")).ToHaveTextAsync("4");
        await Assertions.Expect(wrong.First.Locator(".problem")).ToContainTextAsync("lemon juice");
        await Assertions.Expect(wrong.Last.Locator(".problem")).ToContainTextAsync("ozz");
        await Assertions.Expect(page.GetByRole(AriaRole.Button, new() { Name = "Keep it" })).ToHaveCountAsync(0);
        await Assertions.Expect(page.Locator("#found h2")).ToHaveTextAsync("2 things to mend");

        // The draft beside the text holds every line, the one that could not be read as it was written; the words lead to it and back.
        var fields = page.Locator(".fields input");
        await Assertions.Expect(fields.Nth(1)).ToHaveValueAsync("22.5 ml lemon juce, fresh");
        await Assertions.Expect(fields.Nth(2)).ToHaveValueAsync("15 ozz simple syrup");
        await page.Locator("#words-0-0").ClickAsync();
        Assert.EndsWith("#row-0-0", page.Url, StringComparison.Ordinal);
        await page.GetByRole(AriaRole.Link, new() { Name = "line 3 of the text" }).ClickAsync();
        Assert.EndsWith("#words-0-0", page.Url, StringComparison.Ordinal);

        await fields.Nth(1).FillAsync("22.5 ml lemon juice, fresh");
        await fields.Nth(2).FillAsync("15 ml simple syrup");
        await page.GetByRole(AriaRole.Button, new() { Name = "Look again" }).ClickAsync();
        await Assertions.Expect(page.Locator("#found h2")).ToHaveTextAsync("Every line is understood.");
        Assert.Null(house.File.Load().Spec("Harbour Test Sour"));
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep it" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Harbour Test Sour", Level = 1 })).ToBeVisibleAsync();
        Assert.EndsWith("/spec/Harbour%20Test%20Sour", page.Url, StringComparison.Ordinal);
        await Assertions.Expect(page.Locator(".home b").First).ToHaveTextAsync(new Regex("ml|oz"));

        var amount = page.Locator(".home b").Nth(1);
        var (before, verdict) = (await amount.InnerTextAsync(), await page.Locator(".verdict").InnerTextAsync());
        await page.GetByRole(AriaRole.Link, new() { Name = "more lemon juice" }).ClickAsync();
        await Assertions.Expect(amount).Not.ToHaveTextAsync(before);
        var once = await amount.InnerTextAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "more lemon juice" }).ClickAsync();
        await Assertions.Expect(amount).Not.ToHaveTextAsync(once);
        await Assertions.Expect(page.Locator(".verdict")).Not.ToHaveTextAsync(verdict);
        Assert.Contains("?pour=", page.Url, StringComparison.Ordinal);
        if (script) await Assertions.Expect(page.GetByRole(AriaRole.Link, new() { Name = "more lemon juice" })).ToBeFocusedAsync();
        var after = await amount.InnerTextAsync();

        await page.GetByRole(AriaRole.Button, new() { Name = "Keep this pour" }).ClickAsync();
        await Assertions.Expect(page.GetByText("This is the pour you keep")).ToBeVisibleAsync();
        await page.GotoAsync("/spec/harbour%20test%20sour?as=kept");
        await Assertions.Expect(page.Locator(".home b").Nth(1)).ToHaveTextAsync(after);
        await Assertions.Expect(page.Locator(".pours [aria-current]")).ToContainTextAsync("kept");
        Assert.Contains(house.File.Load().HousePours, p => p.Spec == "Harbour Test Sour");
    }

    [Fact]
    public async Task A_nudge_far_down_the_page_leaves_the_page_where_it_is()
    {
        await using var house = await OpenHouse.Open(demo: true);
        var page = await chromium.Page(house, width: 390, height: 844);
        await page.GotoAsync("/spec/Negroni");
        var more = page.GetByRole(AriaRole.Link, new() { NameRegex = new Regex("^more ") }).Last;
        await more.ScrollIntoViewIfNeededAsync();
        await page.EvaluateAsync("scrollTo(0, 300)");
        await more.ClickAsync();
        await page.WaitForURLAsync(new Regex("pour="));
        await Assertions.Expect(page.Locator(".pours .own")).ToBeVisibleAsync();
        Assert.InRange(await page.EvaluateAsync<double>("scrollY"), 250, 2000);
    }

    [Fact]
    public async Task Another_bottle_is_poured_from_the_chooser_without_script()
    {
        await using var house = await OpenHouse.Open(demo: true);
        var page = await chromium.Page(house, script: false);
        await page.GotoAsync("/spec/Breakwater%20Sour");
        var line = page.Locator("table.lines tbody tr").First;
        var before = await line.Locator("summary").InnerTextAsync();
        await line.Locator("summary").ClickAsync();
        await line.Locator("select").SelectOptionAsync(new SelectOptionValue { Index = before == await line.Locator("option").Nth(1).InnerTextAsync() ? 0 : 1 });
        await line.GetByRole(AriaRole.Button, new() { Name = "Pour it" }).ClickAsync();
        await Assertions.Expect(line.Locator("summary")).Not.ToHaveTextAsync(before);
        Assert.Contains("pour=", page.Url, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task An_empty_bar_greets_and_lays_out_fifteen_specs(bool script)
    {
        await using var house = await OpenHouse.Open();
        var page = await chromium.Page(house, script);
        await page.GotoAsync("/");
        await Assertions.Expect(page.GetByRole(AriaRole.Link, new() { Name = "Paste a first spec" })).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Lay out the demo household" }).ClickAsync();
        await Assertions.Expect(page.Locator("ol.list > li")).ToHaveCountAsync(15);
        await Assertions.Expect(page.Locator("ol.list").GetByText("out of reach").First).ToBeVisibleAsync();
    }
}

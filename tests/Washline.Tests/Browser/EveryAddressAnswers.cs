using System.Net;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using Washline.App.Pages;
using Washline.Fitting;

namespace Washline.Tests.Browser;

public sealed class EveryAddressAnswers
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData("50/50 Sour")]
    [InlineData("A+B & C #1 %41?")]
    [InlineData("Two~Halves = One")]
    [InlineData("Œuf à la 茶")]
    [InlineData("..")]
    [InlineData(".")]
    [InlineData("~.. ~Tide")]
    public async Task A_spec_is_found_whatever_stands_in_its_title(string title)
    {
        await using var house = await OpenHouse.Open(demo: true);
        house.File.Change(bar => bar with { Specs = [.. bar.Specs, bar.Spec("Daiquiri")! with { Title = title }] });
        Assert.Contains($"<h1>{title}</h1>", WebUtility.HtmlDecode(await house.Get(BenchAddress.Of(title))), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("pour=")]
    [InlineData("pour=Tin+Roof+white+rum~-5&pour=limes~NaN&pour=house+simple+syrup~1e308")]
    [InlineData("pour=Tin+Roof+white+rum~5000&pour=limes~5000&pour=house+simple+syrup~5000")]
    [InlineData("pour=Tin+Roof+white+rum~0&pour=limes~0&pour=house+simple+syrup~0")]
    [InlineData("pour=a&pour=b&pour=c&pour=d&pour=e")]
    [InlineData("as=nothing")]
    [InlineData("pour=%ff~1&as=%00")]
    public async Task Pours_that_nobody_can_pour_still_show_the_bench(string asked)
    {
        await using var house = await OpenHouse.Open(demo: true);
        var page = await house.Get("/spec/Daiquiri?" + asked);
        Assert.Contains("<h1>Daiquiri</h1>", page, StringComparison.Ordinal);
        Assert.DoesNotContain("NaN", page, StringComparison.Ordinal);
        Assert.DoesNotContain("∞", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_bottle_used_up_while_the_page_is_open_is_no_longer_poured()
    {
        await using var house = await OpenHouse.Open(demo: true);
        Assert.Contains("Tin Roof white rum", await house.Get("/spec/Daiquiri"), StringComparison.Ordinal);
        house.File.Change(bar => bar with { Bottles = [.. bar.Bottles.Where(b => b.Name != "Tin Roof white rum")] });
        Assert.DoesNotContain("Tin Roof white rum", await house.Get("/spec/Daiquiri"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_spec_changed_while_the_page_is_open_is_fitted_anew()
    {
        await using var house = await OpenHouse.Open(demo: true);
        var before = await house.Get("/spec/Daiquiri");
        house.File.Change(bar => bar with { Specs = [.. bar.Specs.Select(s => s.Title == "Daiquiri" ? s with { Lines = bar.Spec("Negroni")!.Lines } : s)] });
        Assert.DoesNotContain("red bitter aperitif", before, StringComparison.Ordinal);
        Assert.Contains("red bitter aperitif", await house.Get("/spec/Daiquiri"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task There_is_nothing_at_an_address_outside_the_site()
    {
        await using var house = await OpenHouse.Open();
        using var client = new HttpClient();
        using var response = await client.GetAsync(new Uri(house.Address + "/%2e%2e%2f%2e%2e%2fetc%2fpasswd"), Stop);
        Assert.Equal(HttpStatusCode.NotFound, response.StatusCode);
    }

    [Theory]
    [InlineData("/", HttpStatusCode.OK)]
    [InlineData("/spec/Daiquiri", HttpStatusCode.OK)]
    [InlineData("/spec/Nobody", HttpStatusCode.NotFound)]
    public async Task The_head_of_a_page_is_answered_as_the_page_is(string address, HttpStatusCode code)
    {
        await using var house = await OpenHouse.Open(demo: true);
        using var client = new HttpClient();
        foreach (var _ in new[] { 1, 2 }) // twice over one connection: nothing is left over from the first
        {
            using var asked = new HttpRequestMessage(HttpMethod.Head, new Uri(house.Address + address));
            using var head = await client.SendAsync(asked, Stop);
            Assert.Equal((code, "text/html", ""), (head.StatusCode, head.Content.Headers.ContentType?.MediaType, await head.Content.ReadAsStringAsync(Stop)));
        }
    }

    [Fact]
    public async Task Specs_whose_fit_is_not_found_yet_are_shown_and_found_later()
    {
        await using var house = await OpenHouse.Open(demo: true);
        var shelf = new Shelf(house.File);
        var bar = shelf.Load();
        var waiting = bar.Specs.Select(s => (s, (Fit?)null)).ToList();
        var page = await Rendered(new() { ["Fits"] = waiting, ["Bar"] = bar });
        Assert.Contains($"{bar.Specs.Count} still being fitted", page, StringComparison.Ordinal);
        Assert.All(bar.Specs, s => Assert.Contains(WebUtility.HtmlEncode(s.Title), page, StringComparison.Ordinal));

        Assert.Equal(bar.Specs, shelf.FitsWithin(bar, TimeSpan.Zero).Select(f => f.Spec));
        var found = shelf.FitsWithin(bar, Timeout.InfiniteTimeSpan);
        Assert.Equal(bar.Specs.Select(s => shelf.Fit(s, bar)), found.Select(f => f.Fit));
        Assert.DoesNotContain("being fitted", await Rendered(new() { ["Fits"] = found, ["Bar"] = bar }), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Tonight_shows_what_is_found_and_the_whole_once_nothing_is_waited_for()
    {
        await using var house = await OpenHouse.Open(demo: true);
        var shelf = new Shelf(house.File);
        var bar = shelf.Load();
        shelf.Fit(bar.Specs[0], bar);
        var (part, waiting) = shelf.TonightWithin(bar, TimeSpan.Zero);
        Assert.Equal(bar.Specs.Count, part.Fits.Count + waiting);
        if (waiting > 0) Assert.Empty(part.Buying);
        Assert.Contains(bar.Specs[0].Title, part.Fits.Select(f => f.Spec.Title));
        var (whole, none) = shelf.TonightWithin(bar, Timeout.InfiniteTimeSpan);
        Assert.Equal((0, bar.Specs.Count), (none, whole.Fits.Count));
        Assert.Equal(Washline.Fitting.Tonight.Of(bar, Washline.Drinks.Kinds.Catalogue).Fits.Select(f => f.Spec.Title), whole.Fits.Select(f => f.Spec.Title));
    }

    private static async Task<string> Rendered(Dictionary<string, object?> shown)
    {
        await using var services = new ServiceCollection().AddLogging().BuildServiceProvider();
        await using var renderer = new HtmlRenderer(services, services.GetRequiredService<ILoggerFactory>());
        return await renderer.Dispatcher.InvokeAsync(async () => (await renderer.RenderComponentAsync<SpecsPage>(ParameterView.FromDictionary(shown))).ToHtmlString());
    }
}

using System.Net;

namespace Washline.Tests.Browser;

public sealed class OnlyThisComputer
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task It_listens_on_loopback_alone()
    {
        await using var house = await OpenHouse.Open();
        Assert.StartsWith("http://127.0.0.1:", house.Address, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("bar.example", HttpStatusCode.BadRequest)]
    [InlineData("127.0.0.1.bar.example", HttpStatusCode.BadRequest)]
    [InlineData("localhost", HttpStatusCode.OK)]
    public async Task A_request_under_another_name_is_refused(string host, HttpStatusCode answer)
    {
        await using var house = await OpenHouse.Open();
        using var client = new HttpClient();
        using var request = new HttpRequestMessage(HttpMethod.Get, house.Address) { Headers = { Host = host } };
        using var response = await client.SendAsync(request, Stop);
        Assert.Equal(answer, response.StatusCode);
    }

    [Theory]
    [InlineData("/demo")]
    [InlineData("/read")]
    [InlineData("/spec/Daiquiri/keep")]
    [InlineData("/spec/Daiquiri/ice")]
    public async Task Nothing_is_changed_by_a_form_from_elsewhere(string path)
    {
        await using var house = await OpenHouse.Open(demo: path != "/demo");
        var before = house.File.Load();
        using var client = new HttpClient();
        using var form = new FormUrlEncodedContent(new Dictionary<string, string> { ["text"] = "Plain\n\n60 ml gin\n", ["keep"] = "keep", ["pour"] = "limes~25", ["lay"] = "lay", ["ice"] = "wet" });
        using var response = await client.PostAsync(new Uri(house.Address + path), form, Stop);
        Assert.Equal(HttpStatusCode.BadRequest, response.StatusCode);
        var after = house.File.Load();
        Assert.Equal((before.Specs.Count, before.HousePours.Count, before.IsEmpty, before.Settings), (after.Specs.Count, after.HousePours.Count, after.IsEmpty, after.Settings));
    }

    [Fact]
    public async Task A_title_with_markup_in_it_is_shown_as_text()
    {
        const string title = "<script>alert(1)</script> & \"Sour\"";
        await using var house = await OpenHouse.Open(demo: true);
        house.File.Change(bar => bar with { Specs = [.. bar.Specs, bar.Spec("Daiquiri")! with { Title = title, Notes = ["<img src=x onerror=alert(2)>"] }] });
        foreach (var path in new[] { "/", "/spec/" + Uri.EscapeDataString(title), "/spec/" + Uri.EscapeDataString("<b>nobody's</b>") })
        {
            using var client = new HttpClient();
            using var response = await client.GetAsync(new Uri(house.Address + path), Stop);
            var page = await response.Content.ReadAsStringAsync(Stop);
            Assert.DoesNotContain("<script>alert", page, StringComparison.Ordinal);
            Assert.DoesNotContain("<img", page, StringComparison.Ordinal);
            Assert.DoesNotContain("<b>nobody", page, StringComparison.Ordinal);
            Assert.Contains(path == "/" || path.Contains("script", StringComparison.Ordinal) ? "&lt;script&gt;alert(1)" : "&lt;b&gt;nobody", page, StringComparison.Ordinal);
            Assert.Contains("default-src 'none'", response.Headers.GetValues("Content-Security-Policy").Single(), StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task No_page_asks_for_anything_from_another_address()
    {
        await using var house = await OpenHouse.Open(demo: true);
        foreach (var path in new[] { "/", "/spec/Negroni", "/bar", "/read" })
            Assert.DoesNotContain("http", (await house.Get(path)).Replace("http-equiv", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }
}

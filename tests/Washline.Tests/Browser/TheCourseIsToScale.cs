using System.Globalization;
using System.Text.RegularExpressions;
using Washline.App.Sheets;
using Washline.Drinks;

namespace Washline.Tests.Browser;

/// <summary>The course on the ice as it stands on the screen, read back against the engine's own numbers.</summary>
[Collection(InTheBrowser.Name)]
public sealed class TheCourseIsToScale(Chromium chromium)
{
    // Where a mark, a line and the ends of a strip's scale stand, in pixels of the screen.
    private const string Measured = """
        () => {
          const mid = e => { const r = e.getBoundingClientRect(); return [r.left + r.width / 2, r.top + r.height / 2]; };
          const num = t => parseFloat(t.textContent.replace('−', '-'));
          const box = document.querySelector('.course').getBoundingClientRect();
          const seconds = [...document.querySelectorAll('.course > line.foot')].filter(l => l.x1.baseVal.value === l.x2.baseVal.value).map(l => mid(l)[0]);
          const labels = [...document.querySelectorAll('.course > g > text.mark')].slice(0, seconds.length).map(num);
          const strips = ['temperature', 'strength'].map((name, i) => {
            const lines = [...document.querySelectorAll('.' + name + ' line.grid')].map(l => mid(l)[1]);
            const marks = [...document.querySelectorAll('.' + name + ' text.mark')].map(num);
            const now = mid(document.querySelectorAll('.course circle.now')[i]);
            const value = y => marks[0] + (y - lines[0]) * (marks.at(-1) - marks[0]) / (lines.at(-1) - lines[0]);
            const curve = document.querySelector('.' + name + ' .curve').getBoundingClientRect();
            return { now: value(now[1]), top: value(curve.top), at: now[0], right: curve.right - box.left - box.width };
          });
          const second = x => labels[0] + (x - seconds[0]) * (labels.at(-1) - labels[0]) / (seconds.at(-1) - seconds[0]);
          return { usual: second(strips[0].at), stop: second(mid(document.querySelector('.course .stop'))[0]), strips };
        }
        """;

    [Theory]
    [InlineData("Daiquiri", 1280, true)]
    [InlineData("Martini", 360, false)]
    [InlineData("Tom Collins", 390, true)]
    public async Task What_is_drawn_reads_back_as_what_was_computed(string title, int width, bool script)
    {
        await using var house = await OpenHouse.Open(demo: true);
        var drink = Drink(house, title);
        var page = await chromium.Page(house, script, width);
        await page.GotoAsync("/spec/" + Uri.EscapeDataString(title));
        var drawn = (await page.EvaluateAsync(Measured))!.Value;
        var course = drink.Course;
        Assert.Equal(drink.Service.Seconds, drawn.GetProperty("usual").GetDouble(), 0.006 * course.Points[^1].Seconds);
        Assert.Equal(course.StopSeconds!.Value, drawn.GetProperty("stop").GetDouble(), 0.006 * course.Points[^1].Seconds);
        var (temperature, strength) = (drawn.GetProperty("strips")[0], drawn.GetProperty("strips")[1]);
        Assert.Equal(course.Usual.TemperatureC, temperature.GetProperty("now").GetDouble(), 0.15);
        Assert.Equal(course.Usual.StrengthPercent, strength.GetProperty("now").GetDouble(), 0.15);
        Assert.Equal(course.Points[0].TemperatureC, temperature.GetProperty("top").GetDouble(), 0.3);
        Assert.Equal(course.Points[0].StrengthPercent, strength.GetProperty("top").GetDouble(), 0.3);
        Assert.Equal(0, temperature.GetProperty("right").GetDouble(), 2.0);
    }

    [Fact]
    public async Task Every_point_of_the_course_is_a_point_of_the_drawing()
    {
        await using var house = await OpenHouse.Open(demo: true);
        var (page, course) = (await house.Get("/spec/Breakwater%20Sour"), Drink(house, "Breakwater Sour").Course);
        foreach (var (strip, value) in new (string, Func<Washline.Mixtures.ChillPoint, double>)[] { ("temperature", p => -p.TemperatureC), ("strength", p => -p.StrengthPercent) })
        {
            var points = Regex.Match(page, $"<g class=\"{strip}\">.*?<polyline class=\"curve\" points=\"([^\"]+)\"", RegexOptions.Singleline).Groups[1].Value.Split(' ')
                .Select(p => p.Split(',').Select(n => double.Parse(n, CultureInfo.InvariantCulture)).ToArray()).ToList();
            foreach (var point in course.Points)
                Assert.Contains(points, p => Math.Abs(p[0] - point.Seconds) < 0.006 && Math.Abs(p[1] - value(point)) < 0.006);
            Assert.Equal(course.Points[^1].Seconds, points[^1][0], 0.006);
        }
    }

    [Theory]
    [InlineData("Negroni")]
    [InlineData("Gasworks Swizzle")]
    public async Task The_drawing_is_told_in_words_and_numbers_too(string title)
    {
        await using var house = await OpenHouse.Open(demo: true);
        var drink = Drink(house, title);
        var page = await chromium.Page(house, script: false);
        await page.GotoAsync("/spec/" + Uri.EscapeDataString(title));
        var words = await page.Locator("#chill-desc").TextContentAsync();
        Assert.StartsWith(words!, await page.Locator(".chill figcaption").InnerTextAsync(), StringComparison.Ordinal);
        Assert.Contains($"it comes to {Say.Celsius(drink.Course.Usual.TemperatureC)} in {Say.Number(drink.Service.Seconds, "0")} s", words, StringComparison.Ordinal);
        Assert.Contains(IceTime.About(drink.Course.StopSeconds!.Value), words, StringComparison.Ordinal);
        var rows = await page.Locator(".moments tbody tr").AllInnerTextsAsync();
        Assert.Equal(
            IceTime.Rows(drink).Select(r => $"{Say.Number(r.Point.Seconds, "0")} {Say.Number(Math.Round(r.Point.TemperatureC), "0")} {Say.Number(IceTime.MeltMl(r.Point), "0")} {Say.Number(r.Point.StrengthPercent, "0.0")} {r.Mark.Split(':')[0]}".Trim()),
            rows.Select(r => Regex.Replace(r, @"\s+", " ").Trim()));
    }

    [Fact]
    public async Task What_decides_the_drink_stands_on_the_bench_with_how_far_it_moves_it()
    {
        await using var house = await OpenHouse.Open(demo: true);
        var page = await house.Get("/spec/Daiquiri");
        Assert.Contains("Your lime juice decides this drink: taste it.", page, StringComparison.Ordinal);
        foreach (var swing in Drink(house, "Daiquiri").Swings.Take(3)) Assert.Contains($"{swing.Input} <small>±{Say.Jnd(swing.Jnd)} of {swing.Attribute}</small>", page, StringComparison.Ordinal);
    }

    private static ServedDrink Drink(OpenHouse house, string title)
    {
        var bar = house.File.Load();
        return Washline.Fitting.Fit.Find(bar.Spec(title)!, bar, Kinds.Catalogue).Closest!.Drink;
    }
}

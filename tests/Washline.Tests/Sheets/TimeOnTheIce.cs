using Washline.App.Drawings;
using Washline.App.Sheets;
using Washline.Drinks;
using Washline.Reading;

namespace Washline.Tests.Sheets;

public class TimeOnTheIce
{
    private const string Daiquiri = "60 ml light rum (40 %)\n30 ml lime juice\n22 ml simple syrup\n";
    private const string Martini = "75 ml London dry gin (47 %)\n15 ml dry vermouth\n";

    public static TheoryData<string> Demo => [.. Directory.EnumerateFiles(House.Path("src", "Washline.App", "Demo", "specs")).Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal)];

    [Theory]
    [InlineData(Daiquiri + "method: shake 12 s", true, "shake 12 s · after about 14 s it only waters")]
    [InlineData(Daiquiri + "method: shake 12 s", false, "shake 12 s · after about 14 s it gets no colder")] // the ice takes back what it gave
    [InlineData(Daiquiri + "method: shake 30 s", true, "shake 30 s · stop at about 14 s: after that it only waters")]
    [InlineData(Martini + "method: stir 30 s", true, "stir 30 s · longer is colder and thinner; after about 2½ min it only waters")]
    [InlineData(Martini + "method: pour without ice", true, "no ice · nothing cools it and nothing waters it")]
    [InlineData(Daiquiri + "method: blend with ice", true, "blend until smooth · at about −5 °C drink and ice are in balance: slushy, 35 % ice")]
    public void The_line_says_how_long_and_from_when_more_only_waters(string spec, bool wet, string line) => Assert.Equal(line, IceTime.Line(Served(spec, wet)));

    [Theory]
    [InlineData(13.5, "14 s")]
    [InlineData(43.3, "45 s")]
    [InlineData(57, "55 s")]
    [InlineData(59, "1 min")]
    [InlineData(111, "2 min")]
    [InlineData(156, "2½ min")]
    [InlineData(297.5, "5 min")]
    public void A_time_that_nobody_takes_to_the_second_is_told_as_one_counts_it(double seconds, string said) => Assert.Equal(said, IceTime.About(seconds));

    [Theory]
    [MemberData(nameof(Demo))]
    public void Each_row_is_the_drink_taken_off_the_ice_at_that_second(string file)
    {
        var drink = ServedDrink.Of(Draft.Read(File.ReadAllText(House.Path("src", "Washline.App", "Demo", "specs", file)), Kinds.Catalogue).Specs[0], true);
        var rows = IceTime.Rows(drink);
        Assert.Equal(drink.Course.Points.Count > 1, rows.Count > 0);
        if (rows.Count == 0) return;
        Assert.InRange(rows.Count, 5, 7);
        Assert.Equal(drink.Service.Seconds, rows.Single(r => r.Mark.StartsWith("usual", StringComparison.Ordinal)).Point.Seconds);
        Assert.Equal(rows.Select(r => r.Point.Seconds).Order(), rows.Select(r => r.Point.Seconds));
        var stop = rows.Single(r => r.Mark.Contains("stop here", StringComparison.Ordinal)).Point.Seconds;
        Assert.Equal(drink.Course.StopSeconds!.Value, stop, 2.5);
        List<Pour> met = [.. drink.Pours.Where(p => drink.Service.InGlass || !p.Last)];
        foreach (var (point, _) in rows)
        {
            var then = ServedDrink.Run(met, drink.Service with { Seconds = point.Seconds });
            Assert.Equal(then.Sip.TemperatureC, point.TemperatureC, 0.03);
            Assert.Equal(then.Sip.StrengthPercent, point.StrengthPercent, 0.03);
        }
    }

    [Fact]
    public void The_drawn_band_at_the_usual_time_is_the_band_of_the_sheet()
    {
        var drink = ServedDrink.Of(Draft.Read("Sour\n\n" + Daiquiri + "method: shake 12 s", Kinds.Catalogue).Specs[0], null);
        var band = ChillPlot.Of(drink)!.AtUsual;
        Assert.Equal((drink.Low.TemperatureC, drink.High.TemperatureC), (band.LowC, band.HighC));
        Assert.Equal((drink.Low.StrengthPercent, drink.High.StrengthPercent), (band.LowPercent, band.HighPercent));
        Assert.True(band.HighC - band.LowC > 2);
    }

    [Fact]
    public void A_batch_says_what_fridge_and_freezer_make_of_it()
    {
        Assert.Equal("Made up beforehand: 41 mL of water a drink instead of its ice. From the fridge it pours, from the freezer it is slushy, 14 % ice.", BatchSheet.Sentence(Served(Martini + "method: stir 30 s", true)));
        Assert.StartsWith("Made up beforehand: no water. From the fridge it pours, from the freezer it pours", BatchSheet.Sentence(Served(Martini + "method: pour without ice", true)), StringComparison.Ordinal);
        Assert.Contains("frozen solid", BatchSheet.Sentence(Served(Daiquiri + "method: blend with ice", true)), StringComparison.Ordinal);
        Assert.Equal("", BatchSheet.Sentence(Served("90 ml soda water\nmethod: build over ice\nice: cubes", true)));
    }

    private static ServedDrink Served(string spec, bool wet) => ServedDrink.Of(Draft.Read("Drink\n\n" + spec, Kinds.Catalogue).Specs[0], wet);
}

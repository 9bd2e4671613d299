using Washline.Drinks;
using Washline.Measures;
using Washline.Tests.Fitting;
using Washline.Tests.Published;

namespace Washline.Tests.Drinks;

public class Tolerances
{
    // A kind and a strength that each row of the table means; the table says by how much.
    private static readonly (string Kind, double Percent, string[] Rows)[] Labels =
    [
        ("gin", 40, ["any other drink", "distilled spirits"]), ("orange-liqueur", 38, ["any other drink", "distilled spirits"]), ("aromatic-bitters", 44.7, ["any other drink", "distilled spirits"]),
        ("lager", 5, ["beer to 5.5", "malt beverages"]), ("lager", 5.5, ["beer to 5.5", "malt beverages"]), ("stout", 8, ["beer over 5.5", "malt beverages"]),
        ("cider", 5, ["cider"]), ("mead", 12, ["cider"]),
        ("white-wine", 12.5, ["eu wine", "wine to 14"]), ("white-wine", 14, ["eu wine", "wine to 14"]), ("sweet-vermouth", 16, ["eu wine", "wine over 14"]), ("ruby-port", 20, ["eu wine", "wine over 14"]),
    ];

    [Fact]
    public void A_label_may_be_off_by_the_widest_that_the_table_of_laws_allows()
    {
        var rows = PublishedTable.Read("label-tolerance.csv").Rows;
        foreach (var (kind, percent, names) in Labels)
        {
            var meant = names.Select(n => rows.Single(r => $"{r["law"]} {r["drink"]}".StartsWith(n, StringComparison.Ordinal) || r["drink"].StartsWith(n, StringComparison.Ordinal))).ToList();
            var off = meant.Max(r => r.Number("tolerance_pct"));
            var band = Pour.Of("a bottle", Kinds.Catalogue[kind], percent, null, null)!.Strength;
            Assert.Equal((percent - off, percent, percent + off), (band.Low, band.Typical, band.High));
        }
    }

    [Fact]
    public void Every_row_of_the_table_of_laws_is_asked_of_some_label_and_names_kinds_there_are()
    {
        var rows = PublishedTable.Read("label-tolerance.csv").Rows;
        Assert.Equal(rows.Count, LabelTolerance.All.Count);
        foreach (var (row, ours) in rows.Zip(LabelTolerance.All))
        {
            Assert.Equal((row["drink"], row.Number("tolerance_pct"), row.Number("over_pct", 0), row.Number("to_pct", 100)), (ours.Drink, ours.Percent, ours.OverPercent, ours.ToPercent));
            Assert.Contains(Labels, l => l.Rows.Any(n => $"{row["law"]} {row["drink"]}".StartsWith(n, StringComparison.Ordinal) || row["drink"].StartsWith(n, StringComparison.Ordinal)));
            Assert.All(ours.Kinds, id => Assert.NotNull(Kinds.Catalogue[id]));
        }
    }

    [Fact]
    public void A_label_of_no_alcohol_and_one_of_pure_alcohol_stay_within_what_can_be()
    {
        Assert.Equal(Band.Exactly(0), Tolerance.Labelled(Kinds.Catalogue["gin"], 0));
        Assert.Equal(100, Tolerance.Labelled(Kinds.Catalogue["gin"], 100).High);
        Assert.Equal(0, Tolerance.Labelled(Kinds.Catalogue["gin"], 0.2).Low);
    }

    [Fact]
    public void The_band_of_a_pour_by_eye_reaches_to_the_published_pour()
    {
        var rows = PublishedTable.Read("measures.csv").Rows;
        var meant = Tolerance.FreePour(Band.Exactly(44.3));
        var most = rows.Single(r => r["item"].Contains("barkeepers, short", StringComparison.Ordinal)).Number("typical");
        Assert.Equal(most, meant.High, 0.5);
        Assert.All(rows.Where(r => r["item"].StartsWith("free pour", StringComparison.Ordinal)), r => Assert.InRange(r.Number("typical"), meant.Low, meant.High + 0.2));
        var line = rows.Single(r => r["item"].Contains("to a line", StringComparison.Ordinal) && r["item"].Contains("below 100", StringComparison.Ordinal)).Number("typical");
        Assert.True(Tolerance.Jigger(Band.Exactly(45)).High - 45 < line);
        Assert.Equal(5.5, Tolerance.Jigger(Band.Exactly(5)).High);
    }

    [Fact]
    public void A_home_without_a_measure_pours_less_surely()
    {
        var spec = DemoHome.Spec("Daiquiri");
        var with = Washline.Fitting.Fit.Of(spec, DemoHome.Bar, Kinds.Catalogue).Pour([])!.Drink;
        var without = Washline.Fitting.Fit.Of(spec, DemoHome.Bar with { Measures = [] }, Kinds.Catalogue).Pour([])!.Drink;
        Assert.True(without.High.VolumeMl - without.Low.VolumeMl > 1.2 * (with.High.VolumeMl - with.Low.VolumeMl));
    }

    [Fact]
    public void A_measured_bottle_narrows_the_drink_at_once()
    {
        var drink = ServedDrink.Of(DemoHome.Spec("Daiquiri"), true);
        ServedDrink Known(string kind, double? strength, double? sugar, double? acid) => ServedDrink.Of(
            [.. drink.Pours.Select(p => p.Kind.Id == kind ? Pour.Of(p.Name, p.Kind, strength, sugar, acid)! with { Millilitres = p.Millilitres, Line = p.Line } : p)], drink.Service);
        var (lime, rum) = (drink.Pours.Single(p => p.Kind.Id == "lime-juice"), drink.Pours[0]);
        static double Width(ServedDrink d, Func<Sip, double> of) => of(d.High) - of(d.Low);

        var titrated = Known("lime-juice", null, null, lime.Acid.Typical);
        Assert.Equal(drink.Served.AcidGPerL, titrated.Served.AcidGPerL, 1e-9);
        Assert.True(Width(titrated, s => s.AcidGPerL) < 0.6 * Width(drink, s => s.AcidGPerL));
        Assert.NotEqual("lime juice, acid", titrated.Swings[0].Input);

        var dry = Known(rum.Kind.Id, 40, 0, null);
        Assert.True(Width(dry, s => s.SugarGPerL) < Width(drink, s => s.SugarGPerL));
        Assert.DoesNotContain(dry.Swings, s => s.Input.StartsWith(rum.Kind.Name, StringComparison.Ordinal) && s.Input.EndsWith("sugar", StringComparison.Ordinal));
    }
}

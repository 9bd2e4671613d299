using Washline.Drinks;
using Washline.Fitting;
using Washline.Measures;
using Washline.Tests.Published;

namespace Washline.Tests.Fitting;

/// <summary>One line poured from two bottles, where one is not enough.</summary>
public class SplitLines
{
    private static readonly Kinds All = Kinds.Catalogue;

    private static readonly Measure Ounces = new("jigger", "oz", 0.25, 0.125, 2);

    private static readonly Measure Millilitres = new("jigger", "ml", 5, 2.5, 60);

    private static Bottle Of(string id, double? percent = null, double leftMl = 500, string? name = null) => new()
    {
        Name = name ?? id,
        Kind = All[id],
        Strength = percent is { } p ? Strength.FromPercent(p) : null,
        Left = Volume.FromMillilitres(leftMl),
    };

    private static Bar Home(Measure measure, params Bottle[] bottles) =>
        Bar.Empty with { Bottles = [.. bottles, Of("lime-juice"), Of("simple-syrup")], Measures = [measure], Settings = new Settings("us", true) };

    private static Fit Sour(string spirit, Bar bar, Wishes? wishes = null) =>
        Fit.Find(DemoHome.Read($"Sour\n\n{spirit}\n1 oz lime juice\n¾ oz simple syrup\n\nshake 12 s\nice: none\n"), bar, All, wishes ?? Wishes.None);

    private static IEnumerable<(Spec Spec, Bar Bar, Fit Fit)> Bars(int count, int seed) => SmallBars.Some(count, seed, 1500).Where(b => b.Fit.SplittingForTests().Count > 0);

    [Fact]
    public void No_candidate_of_a_small_bar_is_nearer_than_the_closest_where_lines_may_be_split()
    {
        var (compared, split) = (0, 0);
        foreach (var (spec, bar, fit) in Bars(1500, 900_000))
        {
            var (least, fewest, simplest, isSplit) = EveryCandidate.Of(fit)!.Value;
            Assert.Equal(least, fit.Closest!.DistanceJnd, 1e-8);
            Assert.Equal(fewest, fit.Simplest!.ChangedLines);
            Assert.Equal(simplest, fit.Simplest.DistanceJnd, 1e-8);
            Assert.Equal(isSplit, fit.Closest.Lines.Any(l => l.IsSplit));
            compared++;
            split += isSplit ? 1 : 0;
        }

        Assert.True(compared >= 100 && split >= 40, $"{compared} compared, {split} of them split.");
    }

    [Fact]
    public void A_split_pours_of_each_bottle_at_least_a_mark_and_no_more_than_is_left_and_only_one_line_is_split_for_nearness()
    {
        var found = 0;
        foreach (var (_, bar, fit) in Bars(1000, 910_000))
        {
            var step = bar.Measures[0].Step * bar.Measures[0].UnitMl;
            foreach (var offer in new[] { fit.Straight!, fit.Closest!, fit.Simplest! })
            {
                foreach (var poured in offer.Lines.SelectMany(l => l.Parts).GroupBy(p => p.Pour.Name).Where(g => g.Key != "water"))
                    Assert.InRange(poured.Sum(p => p.Mark.Millilitres), 0, bar.Bottles.Single(b => b.Name == poured.Key).Left.Millilitres + 1e-6);
                foreach (var line in offer.Lines.Where(l => l.IsSplit))
                {
                    found++;
                    Assert.All(line.Parts, p => Assert.True(p.Mark.Millilitres >= step * 0.98, $"{p.Mark.Text} on a {bar.Measures[0].Name}"));
                    Assert.Equal(line.Mark.Millilitres, line.Parts.Sum(p => p.Mark.Millilitres), 1e-9);
                    Assert.True(line.Changed && line.Why.Length > 0);
                    Assert.Contains(line.Line.Amount.Unit.Kind, new[] { UnitKind.Poured, UnitKind.Part });
                    Assert.False(line.Pour.Last);
                }
            }

            var needed = fit.SearchForTests().Slots.Count(s => s.Options.All(o => o.Split.Count > 0));
            Assert.InRange(fit.Closest!.Lines.Count(l => l.IsSplit), 0, needed + 1);
        }

        Assert.True(found > 40, $"Only {found} lines were split.");
    }

    [Fact]
    public void The_order_in_which_bottles_are_listed_does_not_matter_to_a_split()
    {
        static string Words(Offer o) => string.Join("; ", o.Lines.Select(l => l.Words)) + FormattableString.Invariant($" {o.DistanceJnd:R}");
        foreach (var (spec, bar, fit) in Bars(600, 920_000))
        {
            var turned = Fit.Find(spec, bar with { Bottles = [.. bar.Bottles.Reverse()] }, All);
            Assert.Equal(Words(fit.Closest!), Words(turned.Closest!));
            Assert.Equal(Words(fit.Simplest!), Words(turned.Simplest!));
        }
    }

    [Fact]
    public void A_bar_with_the_bottle_that_was_meant_splits_nothing()
    {
        var exact = Sour("2 oz aged rum (50 %)", Home(Ounces, Of("aged-rum", 40), Of("aged-rum", 63, name: "strong"), Of("aged-rum", 50, name: "as meant")));
        Assert.Equal(0, exact.Closest!.DistanceJnd, 1e-9);
        Assert.DoesNotContain(exact.Closest.Lines, l => l.IsSplit);
    }

    // Parts by volume add up in grams, so what a hundred parts of each strength hold of alcohol and of water adds up; the mixture's strength is where the table has the two in that proportion.
    [Theory]
    [InlineData(40, 60, 0.5)]
    [InlineData(40, 75, 0.25)]
    [InlineData(35, 95, 0.4)]
    [InlineData(0, 65, 0.375)]
    [InlineData(0, 95, 0.55)]
    public void The_strength_of_a_split_is_that_of_the_gauging_manual(double weak, double strong, double shareOfStrong)
    {
        var table = PublishedTable.Read("alcohol-water-parts-27cfr30.csv").Rows.Select(r => (Alcohol: r.Number("abv_pct_60f"), Water: r.Number("water_parts"))).ToList();
        double Water(double percent) => percent == 0 ? 100 : table.Single(r => r.Alcohol == percent).Water;
        var ratio = ((1 - shareOfStrong) * Water(weak) + shareOfStrong * Water(strong)) / ((1 - shareOfStrong) * weak + shareOfStrong * strong);
        var above = table.FindIndex(r => r.Water / r.Alcohol < ratio);
        var ((lowAlcohol, lowWater), (highAlcohol, highWater)) = (table[above - 1], table[above]);
        // Between two rows: so much of the one and so much of the other, which have that proportion.
        var part = (lowWater - ratio * lowAlcohol) / (lowWater - highWater + ratio * (highAlcohol - lowAlcohol));
        var published = lowAlcohol + part * (highAlcohol - lowAlcohol);

        Pour Spirit(double percent) => Pour.Of("spirit", percent > 0 ? All["vodka"] : All["water"], percent > 0 ? percent : null, null, null)!;
        var both = Pour.Blend("both", Spirit(strong), shareOfStrong, Spirit(weak));
        Assert.Equal(published, both.Strength.Typical, 0.06);
        Assert.Equal(both.Composition.Strength.Percent, both.Strength.Typical, 1e-9);
        Assert.True(both.Strength.Low <= both.Strength.Typical && both.Strength.High >= both.Strength.Typical);
        if (weak == 0) Assert.True(both.Strength.Typical > shareOfStrong * strong, "Spirit and water take up less room together.");
    }

    [Fact]
    public void A_split_tastes_as_its_two_parts_poured_one_after_the_other()
    {
        var bar = Home(Millilitres, Of("aged-rum", 40), Of("overproof-rum", 63));
        var fit = Sour("60 ml aged rum (50 %)", bar);
        var line = fit.Closest!.Lines[0];
        Assert.Equal("35 ml aged-rum + 25 ml overproof-rum", line.Words);
        var apart = DemoHome.Read("Sour\n\n35 ml aged rum (40 %)\n25 ml overproof rum (63 %)\n1 oz lime juice\n¾ oz simple syrup\n\nshake 12 s\nice: none\n");
        var poured = ServedDrink.Of(apart, true).Served;
        Assert.Equal(poured.StrengthPercent, fit.Closest.Drink.Served.StrengthPercent, 1e-6);
        Assert.Equal(poured.VolumeMl, fit.Closest.Drink.Served.VolumeMl, 1e-6);
        Assert.Equal(2, fit.Closest.Drink.Pours.Count(p => p.Kind.IsA("rum")));
        // The weaker carries 0.8 of the flavour in each millilitre, the stronger 1.26.
        var level = 100 * All["aged-rum"].Potency * (35 * 0.8 + 25 * 1.26) / poured.VolumeMl;
        Assert.Equal(Jnd.OfFlavour(level) - Jnd.OfFlavour(100 * All["aged-rum"].Potency * 60 / fit.Target.Served.VolumeMl), line.FlavourJnd, 1e-6);
    }

    [Theory]
    [InlineData("2 oz aged rum (50 %)", "aged-rum 40 500; overproof-rum 63 500", "1¼ oz aged-rum + ¾ oz overproof-rum", "40 % alone would be weaker: overproof-rum brings it to 48.7 % where 50 % was meant")]
    [InlineData("2 oz light rum (40 %)", "light-rum 63 500", "1¼ oz light-rum + ¾ oz water", "63 % alone would be stronger: water brings it down to 39.8 %")]
    [InlineData("2 oz rye whisky (45 %)", "rye-whisky 45 35; bourbon 45 500", "what is left (35 ml) rye-whisky + up to 2 oz bourbon", "only 35 mL of rye-whisky are left: bourbon makes up the rest; bourbon stands in for rye whisky")]
    [InlineData("2 oz aged rum (50 %)", "aged-rum 40 55; overproof-rum 63 500", "1¼ oz aged-rum + ¾ oz overproof-rum", "40 % alone would be weaker")] // 55 mL are less than 2 oz: no reason to empty it
    [InlineData("2 oz rye whisky (45 %)", "rye-whisky 45 25; bourbon 45 27", "what is left (25 ml) rye-whisky + up to 1¾ oz bourbon", "only 25 mL of rye-whisky are left: bourbon makes up the rest")]
    public void A_bartender_would_pour_and_say_it_so(string spirit, string bottles, string poured, string why)
    {
        var line = Sour(spirit, Home(Ounces, [.. bottles.Split("; ").Select(b => b.Split(' ')).Select(b => Of(b[0], double.Parse(b[1]), double.Parse(b[2])))])).Closest!.Lines[0];
        Assert.Equal(poured, line.Words);
        Assert.StartsWith(why, line.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_syrups_come_to_the_sugar_that_was_meant()
    {
        var bar = Bar.Empty with { Bottles = [Of("gin"), Of("lemon-juice"), Of("honey"), Of("honey-syrup")], Measures = [Millilitres], Settings = new Settings("us", true) };
        var line = Fit.Find(DemoHome.Read("Honeyed\n\n60 ml gin\n30 ml lemon juice\n30 ml rich honey syrup\n\nshake 12 s\nice: none\n"), bar, All).Closest!.Lines[2];
        Assert.Equal("15 ml honey + 15 ml honey-syrup", line.Words);
        Assert.Contains("honey-syrup alone would be less sweet, honey sweeter: together 867 g/L sugar where 875 was meant", line.Why, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("2 oz gin", "gin 47 500")] // nobody said how strong: 47 % may be what was meant
    [InlineData("2 oz gin (40 %)", "gin 46 500")] // hardly stronger
    [InlineData("2 oz gin", "gin 37.5 500; gin 47 500")]
    [InlineData("2 dashes aged rum (50 %)", "aged-rum 40 500; overproof-rum 63 500")]
    [InlineData("2 oz gin (47 %)", "gin 40 500; aged-rum 60 500")] // the other is no gin
    public void A_bartender_would_not_split_that(string spirit, string bottles)
    {
        var fit = Sour(spirit, Home(Ounces, [.. bottles.Split("; ").Select(b => b.Split(' ')).Select(b => Of(b[0], double.Parse(b[1]), double.Parse(b[2]), $"{b[0]} {b[1]}"))]));
        Assert.DoesNotContain(fit.Closest!.Lines, l => l.IsSplit);
        Assert.Empty(fit.SplittingForTests());
    }

    [Fact]
    public void Nobody_cuts_a_spirit_with_water_where_the_drink_is_lengthened()
    {
        var fit = Fit.Find(DemoHome.Read("Long\n\n50 ml light rum (40 %)\ntop up soda water\n\nbuild\n"), Home(Millilitres, Of("light-rum", 63), Of("soda-water")), All);
        Assert.True(fit.Closest!.DistanceJnd > 0.25);
        Assert.Empty(fit.SplittingForTests());
    }

    [Fact]
    public void Wishes_hold_where_lines_are_split()
    {
        var bar = Home(Ounces, Of("aged-rum", 40) with { Price = 20 }, Of("overproof-rum", 63) with { Price = 70 });
        Fit With(Wishes wishes) => Sour("2 oz aged rum (50 %)", bar, wishes);
        Assert.True(With(new Wishes { OnlyMarks = true }).Closest!.Lines[0].IsSplit);
        Assert.True(With(new Wishes { MostChanges = 1 }).Closest!.Lines[0].IsSplit);
        Assert.False(With(new Wishes { MostChanges = 0 }).Closest!.Lines[0].IsSplit);
        Assert.False(With(new Wishes { KeepLines = [0] }).Closest!.Lines[0].IsSplit);
        // A split glass costs 1¼ oz of 20 and ¾ oz of 70 a bottle: 3.28; straight costs 1.69.
        Assert.False(With(new Wishes { Budget = 2.5m }).Closest!.Lines[0].IsSplit);
        Assert.True(With(new Wishes { Budget = 3.4m }).Closest!.Lines[0].IsSplit);
    }

    [Fact]
    public void A_bottle_to_be_used_up_is_emptied_and_the_line_filled_from_another()
    {
        var bar = Home(Millilitres, Of("bourbon", 45), Of("bourbon", 50, 22, "last of the bourbon"));
        var line = Sour("60 ml bourbon (45 %)", bar, new Wishes { UseUp = "last of the bourbon" }).Closest!.Lines[0];
        Assert.Equal("what is left (22 ml) last of the bourbon + up to 60 ml bourbon", line.Words);
        var almonds = Home(Millilitres, Of("orgeat", null, 8), Of("orgeat", null, 10, "orgeat 2"));
        Assert.Equal("without nuts", Fit.Find(DemoHome.Read("Nutty\n\n60 ml lime juice\n15 ml orgeat\n\nshake 12 s\n"), almonds, All, new Wishes { Without = ["nuts"] }).Refused!.Binds);
    }

    [Fact]
    public void A_split_is_among_the_bottles_of_its_line_and_goes_from_mark_to_mark()
    {
        var fit = Sour("2 oz aged rum (50 %)", Home(Ounces, Of("aged-rum", 40), Of("overproof-rum", 63)));
        Assert.Equal(["aged-rum", "overproof-rum", "aged-rum and overproof-rum"], fit.Bottles(0));
        var line = fit.Closest!.Lines[0];
        var up = fit.Nudge(0, line.Pour.Name, line.Mark.Millilitres, up: true);
        Assert.Equal(2.25 * Volume.MillilitresPerFluidOunce, up, 0.01);
        IEnumerable<(string, double)> Pours(double ml) => fit.Closest.Lines.Select((l, i) => (l.Pour.Name, i == 0 ? ml : l.Mark.Millilitres));
        Assert.Equal(fit.Closest.DistanceJnd, fit.Pour([.. Pours(line.Mark.Millilitres)])!.DistanceJnd, 1e-9);
        var more = fit.Pour([.. Pours(up)])!.Lines[0];
        Assert.Equal("1¼ oz aged-rum + 1 oz overproof-rum", more.Words);
        Assert.Equal(line.Mark.Millilitres, fit.Nudge(0, line.Pour.Name, up, up: false), 1e-9);
        // Between the marks it is poured in the proportion of the nearest of them.
        var between = fit.Pour([.. Pours(62)])!.Lines[0];
        Assert.Equal(62, between.Parts.Sum(p => p.Mark.Millilitres), 1e-9);
        Assert.Equal(38.75, between.Parts[0].Mark.Millilitres, 1e-9);
    }

    [Fact]
    public void Alternatives_and_whether_it_stands_know_the_two_bottles_of_a_split()
    {
        var fit = Sour("2 oz aged rum (50 %)", Home(Ounces, Of("aged-rum", 40), Of("overproof-rum", 63), Of("lemon-juice")));
        var others = fit.Alternatives();
        Assert.Contains(others, o => !o.Lines[0].IsSplit && o.DistanceJnd >= fit.Closest!.DistanceJnd + 0.25);
        var standing = fit.Standing()!;
        Assert.True(standing.LowJnd < fit.Closest!.DistanceJnd && standing.HighJnd > fit.Closest.DistanceJnd);
        Assert.True(standing.Holds, standing.HangsOn);
    }
}

using Washline.Drinks;
using Washline.Fitting;
using Washline.Measures;
using static Washline.Tests.Fitting.SplitBar;

namespace Washline.Tests.Fitting;

/// <summary>What else is asked of a fit, where a line is split.</summary>
public class SplitAnswers
{
    private static readonly Kinds All = Kinds.Catalogue;

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

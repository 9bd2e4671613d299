using System.Globalization;
using System.Text.RegularExpressions;
using CsvHelper;
using Washline.Drinks;

namespace Washline.Tests.Drinks;

public class Catalogue
{
    // What is allowed beyond 1.5 %, and why. All of them go into a drink by the drop or the spoon, or are mostly fat.
    private static readonly Dictionary<string, (double Share, string Why)> Loose = new()
    {
        ["glycerin-bitters"] = (0.07, "glycerol is not part of a composition"),
        ["coconut-cream"] = (0.025, "water and density of the table are of two products"),
        ["coconut-milk"] = (0.01, "water and density of the table are of two products"),
        ["cream-of-coconut"] = (0.005, "fat whose room is from memory"),
        ["advocaat"] = (0.01, "egg solids whose room is from memory"),
        ["egg-yolk"] = (0.005, "egg solids whose room is from memory"),
        ["molasses"] = (0.01, "minerals take less room than pulp"),
        ["marmalade"] = (0.005, "pectin and peel"),
    };

    private static IReadOnlyList<Kind> All => Kinds.Catalogue.All;

    [Fact]
    public void The_catalogue_is_as_long_as_it_was_collected() => Assert.InRange(All.Count, 300, 400);

    [Theory]
    [InlineData("spirit", 55)]
    [InlineData("liqueur", 60)]
    [InlineData("bitters", 5)]
    [InlineData("wine", 35)]
    [InlineData("beer", 6)]
    [InlineData("cider", 2)]
    [InlineData("juice", 40)]
    [InlineData("acid", 7)]
    [InlineData("mixer", 20)]
    [InlineData("dairy", 4)]
    [InlineData("egg", 4)]
    [InlineData("plant-milk", 7)]
    [InlineData("sweetener", 40)]
    [InlineData("savoury", 11)]
    [InlineData("herb", 12)]
    [InlineData("fruit", 14)]
    [InlineData("water", 0)]
    public void Every_shelf_is_there_with_its_kinds(string root, int atLeast)
    {
        Assert.Null(Kinds.Catalogue[root].Parent);
        Assert.True(All.Count(k => k.Id != root && k.IsA(root)) >= atLeast, $"{root} has {All.Count(k => k.Id != root && k.IsA(root))}");
    }

    [Fact]
    public void Ids_are_short_plain_words_and_every_kind_hangs_in_the_tree()
    {
        Assert.All(All, k => Assert.Matches("^[a-z]+(-[a-z]+)*$", k.Id));
        Assert.Equal(All.Count, All.Select(k => k.Id).Distinct().Count());
        Assert.All(All, k => Assert.InRange(k.Lineage().Take(10).Count(), 1, 6));
        Assert.All(All, k => Assert.Same(k.Lineage().Last(), Kinds.Catalogue[k.Lineage().Last().Id]));
    }

    [Fact]
    public void No_word_names_two_kinds()
    {
        var twice = All.SelectMany(k => k.Synonyms.Prepend(k.Name).Prepend(k.Id).Select(w => (Word: Words.Plain(w), k.Id)).Distinct())
            .GroupBy(w => w.Word).Where(g => g.Count() > 1).Select(g => $"{g.Key}: {string.Join(", ", g.Select(x => x.Id))}").ToList();
        Assert.True(twice.Count == 0, string.Join("; ", twice));
    }

    [Fact]
    public void Every_number_says_where_it_is_from_or_that_it_is_from_memory()
    {
        var bare = All.SelectMany(k => new[] { (k.Id, What: "strength", Is: k.Strength), (k.Id, What: "sugar", Is: k.Sugar), (k.Id, What: "acid", Is: k.Acid) })
            .Where(f => f.Is != Figure.None && f.Is.Source.Length < 4).Select(f => $"{f.Id} {f.What}")
            .Concat(All.Where(k => k.Piece is { Source.Length: < 4 }).Select(k => $"{k.Id} piece")).ToList();
        Assert.True(bare.Count == 0, string.Join(", ", bare));
    }

    [Fact]
    public void What_is_taken_over_from_another_kind_is_that_kinds_number()
    {
        foreach (var kind in All)
        {
            foreach (var (mine, of) in new (Figure, Func<Kind, Figure>)[] { (kind.Strength, k => k.Strength), (kind.Sugar, k => k.Sugar), (kind.Acid, k => k.Acid) })
            {
                if (!Regex.IsMatch(mine.Source, "^as [a-z-]+$")) continue;
                var other = Kinds.Catalogue.WithId(mine.Source[3..]);
                Assert.True(other is not null, $"{kind.Id} is '{mine.Source}', which is no kind");
                Assert.Equal(of(other!).Band.Typical, mine.Band.Typical);
            }
        }
    }

    [Fact]
    public void A_litre_of_every_liquid_fills_a_litre()
    {
        var off = All.Where(k => !k.Is("solid")).Select(k => (k.Id, Ml: k.Typical.Litre.Volume.Millilitres))
            .Where(k => Math.Abs(k.Ml - 1000) > 0.01).Select(k => $"{k.Id} {k.Ml:0.###}").ToList();
        Assert.True(off.Count == 0, string.Join(", ", off));
    }

    [Fact]
    public void A_litre_holds_the_strength_sugar_and_acid_of_its_kind() => Assert.All(All.Where(k => !k.Is("solid")), k =>
    {
        Assert.Equal(k.Strength.Band.Typical, k.Typical.Strength.Percent, 1e-3);
        Assert.Equal(k.Sugar.Band.Typical, k.Typical.SugarGPerL, 1e-6);
        Assert.Equal(k.Acid.Band.Typical, k.Typical.AcidGPerL, 1e-6);
    });

    [Fact]
    public void Liquids_weigh_what_the_food_tables_say()
    {
        var off = new List<string>();
        using var text = new StreamReader(House.Path("data", "kinds.csv"));
        using var csv = CsvReader.Create(text, new CsvReaderOptions { CommentPrefix = '#' });
        var (id, density) = (csv.Headers.ToList().IndexOf("id"), csv.Headers.ToList().IndexOf("density_kg_m3"));
        var compared = 0;
        while (csv.Read())
        {
            var kind = Kinds.Catalogue[csv.GetString(id)];
            if (csv.GetString(density) is not { Length: > 0 } cell || kind.Is("solid")) continue;
            compared++;
            var printed = double.Parse(cell, CultureInfo.InvariantCulture);
            var ours = kind.Typical.Litre.Density.KilogramsPerCubicMetre;
            if (Math.Abs(ours / printed - 1) > Loose.GetValueOrDefault(kind.Id).Share + 0.015) off.Add($"{kind.Id} {ours:0} for {printed:0}");
        }

        Assert.True(compared > 100, $"only {compared} compared");
        Assert.True(off.Count == 0, string.Join(", ", off));
    }

    [Fact]
    public void What_is_typical_lies_within_its_range() => Assert.All(All, k =>
    {
        Assert.All(new[] { k.Strength.Band, k.Sugar.Band, k.Acid.Band }, b => Assert.InRange(b.Typical, b.Low, b.High));
        Assert.InRange(k.Strength.Band.Low, 0, k.Strength.Band.High);
        Assert.InRange(k.Strength.Band.High, 0, 97);
        Assert.InRange(k.Sugar.Band.Low, 0, 1100);
        Assert.InRange(k.Acid.Band.Low, 0, 1000);
        Assert.InRange(k.Potency, 0, 100);
    });

    [Fact]
    public void Shares_of_sugars_make_no_more_than_the_whole() => Assert.All(All, k =>
    {
        Assert.InRange(k.GlucoseShare, 0, 1);
        Assert.InRange(k.FructoseShare, 0, 1);
        Assert.InRange(k.GlucoseShare + k.FructoseShare, 0, 1 + 1e-9);
    });

    [Fact]
    public void Stand_ins_are_for_kinds_that_exist()
    {
        using var text = new StreamReader(House.Path("data", "stand-ins.csv"));
        using var csv = CsvReader.Create(text, new CsvReaderOptions { CommentPrefix = '#' });
        var pairs = new HashSet<(string, string)>();
        while (csv.Read())
        {
            var (asked, bottle) = (csv.GetString(0), csv.GetString(1));
            Assert.True(Kinds.Catalogue.WithId(asked) is not null, $"{asked} is no kind");
            Assert.True(Kinds.Catalogue.WithId(bottle) is not null, $"{bottle} is no kind");
            Assert.InRange(double.Parse(csv.GetString(2), CultureInfo.InvariantCulture), 0, 9);
            Assert.True(pairs.Add((asked, bottle)), $"{asked} by {bottle} stands twice");
            Assert.NotEmpty(csv.GetString(3));
        }

        Assert.InRange(pairs.Count, 50, 1000);
    }
}

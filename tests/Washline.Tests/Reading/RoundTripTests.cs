using System.Globalization;
using CsCheck;
using Washline.Drinks;
using Washline.Measures;
using Washline.Reading;
using Spec = Washline.Drinks.Spec;

namespace Washline.Tests.Reading;

public class RoundTripTests
{
    private static readonly Kinds All = Kinds.Catalogue;
    private static readonly Kind[] Poured = [.. All.All.Where(k => !k.Name.Any(c => char.IsDigit(c) || c is '(' or ',') && All.Find(k.Name).Kind == k)];
    private static readonly Kind[] Counted = [.. Poured.Where(k => k.Piece is not null)];

    private static readonly Gen<Amount> Measured =
        from amount in Gen.OneOf<(double Low, double High, string Written)>(
            (60, 60, "60"), (22.5, 22.5, "22.5"), (1.5, 1.5, "1½"), (0.75, 0.75, "3/4"), (1.5, 1.5, "1 1/2"), (2, 3, "2–3"), (0.5, 0.75, "½ to ¾"), (1.5, 1.5, "1,5"), (0.25, 0.25, ".25"), (1, 1, "a"), (2, 2, "two"))
        from unit in Gen.OneOf(Units.Millilitre, Units.Centilitre, Units.Ounce, Units.Teaspoon, Units.Barspoon, Units.Dash, Units.Drop, Units.Part, Units.Splash)
        from plural in Gen.Bool
        select new Amount(amount.Low, amount.High, unit, $"{amount.Written} {(plural ? unit.Plural : unit.Name)}");

    private static readonly Gen<(Amount Amount, Kind Kind)> Poured2 =
        from amount in Gen.OneOf<Amount>(Measured, Gen.OneOf("top up", "top with", "fill with").Select(w => new Amount(1, 1, Units.TopUp, w)), Gen.Const(new Amount(1, 1, Units.Rinse, "rinse")))
        from kind in Gen.OneOf(Poured)
        select (amount, kind);

    private static readonly Gen<(Amount Amount, Kind Kind)> Pieces =
        from count in Gen.Int[1, 12]
        from kind in Gen.OneOf(Counted)
        select (new Amount(count, count, Units.Piece, count.ToString(CultureInfo.InvariantCulture)), kind);

    private static readonly Gen<string> Words = Gen.OneOf("fresh", "chilled", "from the freezer", "home-made", "at the end", "well rinsed");

    private static readonly Gen<Line> Lines =
        from what in Gen.Frequency<(Amount Amount, Kind Kind)>((4, Poured2), (1, Pieces))
        from percent in Gen.OneOf<double>(Gen.Const(-1.0), Gen.Double[0, 100].Select(p => Math.Round(p, 1)))
        from qualifiers in Words.Array[0, 2]
        from note in Gen.OneOf<string>(Gen.Const(""), Words)
        from optional in Gen.Bool
        select new Line
        {
            Amount = what.Amount,
            Ingredient = what.Kind.Name,
            Kind = what.Kind,
            Strength = percent >= 0 && what.Kind.Strength.Band.High > 0 ? Strength.FromPercent(percent) : null,
            Qualifiers = qualifiers,
            Note = note,
            Optional = optional,
        };

    internal static readonly Gen<Spec> Specs =
        from title in Gen.OneOf("Harbour Sour", "3 Wise Sailors", "No. 9", "Gin Splash", "Punch: A Story", "Top of the Morning", "60 ml of Trouble", "#1", "Shake It", "Méthode", "Ice: Cold")
        from lines in Lines.Array[1, 8]
        from method in Gen.OneOf("shake 12 s", "stir 30 s, strain into a coupe", "build over ice", "dry shake, then shake hard", "swizzle with crushed ice", "", "garnish with mint; serve")
        from ice in Gen.OneOf("", "none", "cubes", "a large cube", "crushed", "on the rocks")
        from glass in Gen.OneOf("", "coupe", "rocks glass", "a tall thing")
        from garnish in Gen.OneOf("lemon twist", "brandied cherry", "mint sprig").Array[0, 2]
        from maker in Gen.OneOf("", "Ines Prado", "Jo: the second")
        from passOn in Gen.Enum<PassOn>()
        from notes in Gen.OneOf("anything", "60 ml is a lot", "method: none", "- dash").Array[0, 3]
        from part in Gen.OneOf(30.0, 25.0, 22.5)
        select Made(title, lines, method, ice, glass, garnish, new Credit(maker, "", maker.Length > 0 ? "told in person" : "", passOn), notes, part);

    [Fact]
    public void What_is_written_reads_back() => Specs.Sample(spec =>
    {
        var draft = Draft.Read(SpecText.Write(spec), All);
        Assert.Equal(SpecWords.Of(spec), SpecWords.Of(Assert.Single(draft.Specs)));
        Assert.Empty(draft.Problems);
    }, iter: 600);

    [Fact]
    public void An_amount_without_words_is_written_in_ours() => Measured.Sample(amount =>
    {
        var spec = new Spec { Title = "Test Drink", Lines = [new Line { Amount = amount with { Written = "" }, Ingredient = "gin", Kind = All["gin"] }] };
        var read = Draft.Read(SpecText.Write(spec), All).Specs[0].Lines[0].Amount;
        Assert.Equal((amount.Low, amount.High, amount.Unit), (read.Low, read.High, read.Unit));
    }, iter: 300);

    [Fact]
    public void A_method_whose_words_do_not_say_its_time_is_written_with_it()
    {
        var spec = new Spec
        {
            Title = "Test Drink",
            Lines = [new Line { Amount = new Amount(60, 60, Units.Millilitre, "60 ml"), Ingredient = "gin", Kind = All["gin"] }],
            Method = new Method(Washline.Mixtures.Technique.Shake, 9, "as hard as you can"),
        };
        var read = Draft.Read(SpecText.Write(spec), All).Specs[0].Method;
        Assert.Equal(new Method(Washline.Mixtures.Technique.Shake, 9, "shake 9 s: as hard as you can"), read);
    }

    // What a spec leaves open follows from the rest, as it does when it is read.
    private static Spec Made(string title, Line[] lines, string words, string ice, string glass, string[] garnish, Credit credit, string[] notes, double part)
    {
        var method = MethodText.Of(words, lines);
        var on = (ice.Length > 0 ? IceText.Of(ice) : null) ?? IceText.Usual(glass, method.Technique);
        return new Spec { Title = title, Lines = lines, Method = method, Glass = glass, IceWritten = ice, Ice = on, Garnish = garnish, Credit = credit, Notes = notes, PartMl = part };
    }
}

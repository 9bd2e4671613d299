using Washline.Measures;

namespace Washline.Drinks;

/// <summary>The units in which specs give amounts, each with its size and where that comes from.</summary>
/// <remarks>
/// Units poured by jigger carry no band of their own: how well a jigger pours is added by whoever pours. Sizes marked <c>measures</c> stand in
/// data/published/measures.csv; <c>memory</c> is our own default.
/// </remarks>
public static class Units
{
    private const double UsOunceMl = 29.5735; // exact definition to four places: measures.csv, US fluid ounce

    /// <summary>Millilitre.</summary>
    public static Unit Millilitre { get; } = Poured("ml", "ml", 1, "exact", "ml", "millilitre", "millilitres", "milliliter", "milliliters", "mls", "cc");

    /// <summary>Centilitre.</summary>
    public static Unit Centilitre { get; } = Poured("cl", "cl", 10, "exact", "cl", "centilitre", "centilitres", "centiliter", "centiliters");

    /// <summary>Decilitre.</summary>
    public static Unit Decilitre { get; } = Poured("dl", "dl", 100, "exact", "dl", "decilitre", "decilitres", "deciliter", "deciliters");

    /// <summary>Litre.</summary>
    public static Unit Litre { get; } = Poured("l", "l", 1000, "exact", "l", "litre", "litres", "liter", "liters", "ltr");

    /// <summary>US fluid ounce, 29.5735 mL.</summary>
    public static Unit Ounce { get; } = Poured("oz", "oz", UsOunceMl, "measures: US fluid ounce",
        "oz", "ozs", "ounce", "ounces", "fl oz", "fluid ounce", "fluid ounces", "floz");

    /// <summary>US cup, eight ounces.</summary>
    public static Unit Cup { get; } = Poured("cup", "cups", 8 * UsOunceMl, "eight US fluid ounces; measures", "cup", "cups", "c");

    /// <summary>Teaspoon: 4.93 mL, cutlery 2.5 to 7.3 mL.</summary>
    public static Unit Teaspoon { get; } = Of("tsp", "tsp", UnitKind.Spooned, new Band(2.5, 4.93, 7.3), "measures: teaspoon",
        "tsp", "tsps", "teaspoon", "teaspoons", "tea spoon", "tea spoons", "teaspoonful", "teaspoonfuls");

    /// <summary>Tablespoon: 14.79 mL, Australia 20 mL.</summary>
    public static Unit Tablespoon { get; } = Of("tbsp", "tbsp", UnitKind.Spooned, new Band(14.79, 14.79, 20), "measures: tablespoon",
        "tbsp", "tbsps", "tbs", "tblsp", "tbl", "tablespoon", "tablespoons", "table spoon", "table spoons", "tablespoonful", "tablespoonfuls");

    /// <summary>Barspoon: 5 mL with a knob, 2.5 mL with a flat end.</summary>
    public static Unit Barspoon { get; } = Of("barspoon", "barspoons", UnitKind.Spooned, new Band(2.5, 5, 5), "measures: barspoon",
        "barspoon", "barspoons", "bar spoon", "bar spoons", "bsp", "bsps", "spoon", "spoons", "barsp", "bs", "spoonful", "barspoonful");

    /// <summary>Dash: 0.9 mL, 0.3 to 1.3 mL; it has no agreed size.</summary>
    public static Unit Dash { get; } = Of("dash", "dashes", UnitKind.Dashed, new Band(0.3, 0.9, 1.3), "measures: dash of bitters", "dash", "dashes", "dsh", "ds");

    /// <summary>Drop: twenty to a millilitre.</summary>
    public static Unit Drop { get; } = Of("drop", "drops", UnitKind.Dashed, new Band(0.02, 0.05, 0.09), "measures: drop", "drop", "drops");

    /// <summary>Spritz from an atomiser: about 0.7 mL in a few presses (memory).</summary>
    public static Unit Spritz { get; } = Of("spritz", "spritzes", UnitKind.Dashed, new Band(0.3, 0.7, 1.2), "memory",
        "spritz", "spritzes", "spray", "sprays", "mist");

    /// <summary>Rinse: what stays in the glass, about 2 mL (memory).</summary>
    public static Unit Rinse { get; } = Of("rinse", "rinses", UnitKind.Dashed, new Band(1, 2, 4), "memory", "rinse", "rinses");

    /// <summary>Pinch between two fingers: about 0.3 mL of a solid (memory).</summary>
    public static Unit Pinch { get; } = Of("pinch", "pinches", UnitKind.Dashed, new Band(0.2, 0.3, 0.5), "memory", "pinch", "pinches");

    /// <summary>Splash: 2.5 mL, 2 to 15 mL.</summary>
    public static Unit Splash { get; } = Of("splash", "splashes", UnitKind.Dashed, new Band(2, 2.5, 15), "measures: splash", "splash", "splashes");

    /// <summary>Float: a layer on top, about 10 mL, from a barspoon to half an ounce (memory).</summary>
    public static Unit Float { get; } = Of("float", "floats", UnitKind.Dashed, new Band(5, 10, 15), "memory", "float", "floats");

    /// <summary>Handful: about 40 mL loosely filled (memory); nothing of a herb that only lends its smell.</summary>
    public static Unit Handful { get; } = Of("handful", "handfuls", UnitKind.Dashed, new Band(25, 40, 60), "memory", "handful", "handfuls", "small handful", "large handful", "big handful");

    /// <summary>Shot: 1.5 US ounces, 25 mL in Britain (memory), unless the text gives its size.</summary>
    public static Unit Shot { get; } = Of("shot", "shots", UnitKind.Poured, new Band(25, 1.5 * UsOunceMl, 60), "memory", "shot", "shots");

    /// <summary>Jigger: 1.5 US ounces (memory), unless the text gives its size.</summary>
    public static Unit Jigger { get; } = Poured("jigger", "jiggers", 1.5 * UsOunceMl, "memory", "jigger", "jiggers");

    /// <summary>Pony: 1 US ounce (memory), unless the text gives its size.</summary>
    public static Unit Pony { get; } = Poured("pony", "ponies", UsOunceMl, "memory", "pony", "ponies", "pony shot");

    /// <summary>Part: a share; the spec says how much one is.</summary>
    public static Unit Part { get; } = Of("part", "parts", UnitKind.Part, default, "the spec", "part", "parts", "part(s)");

    /// <summary>Gram: how much room it takes, the ingredient knows.</summary>
    public static Unit Gram { get; } = Of("g", "g", UnitKind.Weighed, default, "the ingredient", "g", "gr", "gram", "grams", "gramme", "grammes");

    /// <summary>Piece: the ingredient knows how much one brings.</summary>
    public static Unit Piece { get; } = Of("piece", "pieces", UnitKind.Piece, default, "the ingredient", "piece", "pieces");

    /// <summary>Top up: as much as the glass still holds.</summary>
    public static Unit TopUp { get; } = Of("top up", "top up", UnitKind.TopUp, default, "the glass");

    /// <summary>No amount is written.</summary>
    public static Unit Unsaid { get; } = Of("unsaid", "unsaid", UnitKind.Unsaid, default, "nobody has said");

    /// <summary>Every unit.</summary>
    public static IReadOnlyList<Unit> All { get; } =
    [
        Millilitre, Centilitre, Decilitre, Litre, Ounce, Cup, Teaspoon, Tablespoon, Barspoon, Dash, Drop, Spritz, Rinse, Pinch, Splash,
        Float, Handful, Shot, Jigger, Pony, Gram, Part, Piece, TopUp, Unsaid,
    ];

    private static readonly Dictionary<string, Unit> ByWord =
        All.SelectMany(u => u.Words.Select(w => (w, u))).ToDictionary(p => p.w, p => p.u, StringComparer.OrdinalIgnoreCase);

    /// <summary>The unit that is written so, whatever its capitals and points; nothing when there is none.</summary>
    public static Unit? Written(string word) => ByWord.GetValueOrDefault(word.Replace(".", "", StringComparison.Ordinal).Replace('-', ' '));

    /// <summary>The unit whose word is one slip of the finger away; nothing when none is that near.</summary>
    public static Unit? Near(string word) => word.Length < 2 ? null : ByWord
        .Where(p => p.Key.Length > 1 && Words.Slips(word.ToLowerInvariant(), p.Key, 1) == 1)
        .OrderBy(p => p.Key.Length == word.Length ? 1 : 0).ThenBy(p => p.Key, StringComparer.Ordinal)
        .Select(p => p.Value).FirstOrDefault();

    private static Unit Poured(string name, string plural, double ml, string source, params string[] words) =>
        Of(name, plural, UnitKind.Poured, Band.Exactly(ml), source, words);

    private static Unit Of(string name, string plural, UnitKind kind, Band ml, string source, params string[] words) =>
        new() { Name = name, Plural = plural, Kind = kind, Millilitres = ml, Source = source, Words = words };
}

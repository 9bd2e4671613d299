using Washline.Drinks;

namespace Washline.Reading.Speech;

/// <summary>Units as people say them, and as listeners write them down.</summary>
internal static class SaidUnit
{
    private const int LongestUnit = 2;

    // What is said for a unit that is written otherwise.
    private static readonly Dictionary<string, Unit> Said = new()
    {
        ["mil"] = Units.Millilitre,
        ["mils"] = Units.Millilitre,
        ["mill"] = Units.Millilitre,
        ["mills"] = Units.Millilitre,
        ["m l"] = Units.Millilitre,
        ["milli"] = Units.Millilitre,
        ["millies"] = Units.Millilitre,
        ["centi"] = Units.Centilitre,
        ["centis"] = Units.Centilitre,
        ["c l"] = Units.Centilitre,
        ["cls"] = Units.Centilitre,
        ["centi litres"] = Units.Centilitre,
        ["centi liters"] = Units.Centilitre,
        ["milli litres"] = Units.Millilitre,
        ["milli liters"] = Units.Millilitre,
        ["ounce"] = Units.Ounce,
        ["ounzes"] = Units.Ounce,
        ["oz"] = Units.Ounce,
        ["ozs"] = Units.Ounce,
        ["dashs"] = Units.Dash,
        ["dashers"] = Units.Dash,
        ["barspoonful"] = Units.Barspoon,
        ["barspoonfuls"] = Units.Barspoon,
        ["bar spoonful"] = Units.Barspoon,
        ["bars spoon"] = Units.Barspoon,
        ["bars spoons"] = Units.Barspoon,
        ["bar spoons"] = Units.Barspoon,
        ["teaspoonful"] = Units.Teaspoon,
        ["teaspoonfuls"] = Units.Teaspoon,
        ["tablespoonful"] = Units.Tablespoon,
        ["tablespoonfuls"] = Units.Tablespoon,
        ["pinches"] = Units.Pinch,
        ["squirt"] = Units.Splash,
        ["squirts"] = Units.Splash,
    };

    private static readonly HashSet<string> Never = ["l", "spoon", "spoons", "mist", "piece", "pieces", "top up"];

    /// <summary>The unit said there and the word behind it; nothing when none is.</summary>
    public static (Unit Unit, int End)? At(Talk talk, int at)
    {
        for (var length = LongestUnit; length >= 1; length--)
        {
            if (at + length > talk.Count || length > 1 && talk.Before(at + 1) != Pause.None) continue;
            var words = length == 1 ? talk[at] : $"{talk[at]} {talk[at + 1]}";
            if (Never.Contains(words)) continue;
            if ((Said.GetValueOrDefault(words) ?? Units.Written(words)) is { } unit) return (unit, at + length);
        }

        // `thirty miles of lime`: so a listener hears mils.
        return talk[at] is "miles" or "meals" && talk[at + 1] == "of" ? (Units.Millilitre, at + 1) : null;
    }
}

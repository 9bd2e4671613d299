using System.Globalization;
using Washline.Drinks;
using Washline.Measures;
using Washline.Reading;

namespace Washline.App.Storage;

/// <summary>Things at home as entries, and entries as things.</summary>
internal static class Things
{
    /// <summary>The codes of data/published/standard-drinks.csv; a test compares them.</summary>
    public static readonly string[] Countries = ["us", "uk", "au", "nz", "ca", "ie", "fr", "ch", "at", "jp", "hk", "who"];

    public static readonly string[] Shapes = [.. Enum.GetNames<GlassShape>().Select(s => s.ToLowerInvariant())];

    /// <summary>Everything in a bar, in the order of an export.</summary>
    public static IEnumerable<object> Of(Bar bar) =>
        [.. bar.Bottles, .. bar.HouseMade, .. bar.Fruit, .. bar.Tools, .. bar.Glasses, .. bar.Measures, .. bar.Words, bar.Settings, .. bar.Specs, .. bar.HousePours];

    public static string What(object thing) => thing switch
    {
        Bottle => "bottle",
        HouseMade => "house-made",
        Fruit => "fruit",
        Tool => "tool",
        Glass => "glass",
        Measure => "measure",
        PlacedWords => "words",
        Settings => "settings",
        Spec => "spec",
        HousePour => "house-pour",
        _ => throw new ArgumentOutOfRangeException(nameof(thing), thing, "Nothing of that type is kept at home."),
    };

    /// <summary>What it goes by.</summary>
    public static string Name(object thing) => thing switch
    {
        Bottle b => b.Name,
        HouseMade h => h.Name,
        Fruit f => f.Name,
        Tool t => t.Name,
        Glass g => g.Name,
        Measure m => m.Name,
        PlacedWords w => w.Words,
        Spec s => s.Title,
        HousePour p => p.Spec,
        _ => "",
    };

    /// <summary>The thing in words.</summary>
    public static Entry Entry(object thing)
    {
        (string, object?)[] words = thing switch
        {
            Bottle b => [("name", b.Name), ("kind", b.Kind.Id), ("strength_percent", b.Strength?.Percent), ("sugar_g_l", b.SugarGPerL), ("acid_g_l", b.AcidGPerL),
                ("size_ml", b.Size.Millilitres), ("left_ml", b.Left.Millilitres), ("price", b.Price), ("currency", b.Currency), ("note", b.Note)],
            HouseMade h => [("name", h.Name), ("kind", h.Kind.Id), ("strength_percent", h.Strength?.Percent), ("sugar_g_l", h.SugarGPerL), ("acid_g_l", h.AcidGPerL),
                ("left_ml", h.Left.Millilitres), ("made", h.Made?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)),
                ("use_by", h.UseBy?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)), ("note", h.Note)],
            Fruit f => [("name", f.Name), ("kind", f.Kind.Id), ("count", f.Count)],
            Tool t => [("name", t.Name)],
            Glass g => [("name", g.Name), ("shape", g.Shape.ToString().ToLowerInvariant()), ("capacity_ml", g.CapacityMl), ("rim_mm", g.RimMm), ("depth_mm", g.MeasuredDepthMm), ("base_mm", g.BaseMm), ("count", g.Count)],
            Measure m => [("name", m.Name), ("unit", m.Unit), ("step", m.Step), ("eye_step", m.EyeStep), ("largest", m.Largest)],
            PlacedWords w => [("name", w.Words), ("kind", w.Kind.Id)],
            Settings s => [("country", s.Country), ("ice", s.IceWet is { } wet ? wet ? "wet" : "freezer" : ""), .. OwnHand.Cells(s.Hand)],
            Spec s => [("spec", s.Title), ("text", SpecText.Write(s))],
            HousePour p => [("spec", p.Spec), ("lines", PourLines.Write(p.Lines)), ("note", p.Note)],
            _ => throw new ArgumentOutOfRangeException(nameof(thing), thing, "Nothing of that type is kept at home."),
        };
        return new Entry(What(thing), default, words.ToDictionary(w => w.Item1, w => new Cell(Convert.ToString(w.Item2, CultureInfo.InvariantCulture) ?? "", 0, 0)));
    }

    /// <summary>The thing that the words mean; nothing when there are problems, which the entry then holds.</summary>
    /// <param name="entry">The words.</param>
    /// <param name="fits">Whether to hold a composition to what fits into a litre; what is already kept is not asked again.</param>
    public static object? Read(Entry entry, bool fits = true)
    {
        if (!Columns.ByWhat.TryGetValue(entry.What, out var columns))
        {
            entry.Bad("what", entry.What.Length == 0 ? "Nothing says what it is." : $"'{entry.What}' is nothing that is kept at home.", $"Write one of: {string.Join(", ", Columns.ByWhat.Keys)}.");
            return null;
        }

        foreach (var (column, _) in entry.Cells.Where(c => c.Key != "what" && c.Value.Text.Trim().Length > 0 && !columns.Contains(c.Key)))
            entry.Bad(column, $"A {entry.What} has no {Columns.Word(column)}.", $"Leave it out; a {entry.What} has {string.Join(", ", columns.Select(Columns.Word))}.");
        object? thing = entry.What switch
        {
            "bottle" => BottleOf(entry, fits),
            "house-made" => HouseMadeOf(entry, fits),
            "fruit" => entry.Needed("name", "limes") is var name && entry.Kind() is { } kind ? new Fruit(name, kind, entry.Count(1)) : null,
            "tool" => new Tool(entry.Needed("name", "shaker")),
            "glass" => Glasses.Read(entry, fits),
            "measure" => MeasureOf(entry),
            "words" => entry.Needed("name", "\"smoked honey\"") is var words && entry.Kind() is { } meant ? new PlacedWords(words, meant) : null,
            "settings" => new Settings(entry.OneOf("country", Countries), entry["ice"].Trim().Length == 0 ? null : entry.OneOf("ice", "wet", "freezer") == "wet") { Hand = OwnHand.Read(entry) },
            "spec" => SpecOf(entry, fits),
            _ => new HousePour(entry.Needed("spec", "Daiquiri"), PourLines.Read(entry), entry["note"]),
        };
        return entry.Problems.Count == 0 ? thing : null;
    }

    private static Bottle? BottleOf(Entry entry, bool fits)
    {
        var size = entry.Number("size_ml", 1, 1e6, "mL", "700") ?? 700;
        var (price, currency) = entry.Price();
        var name = entry.Needed("name", "\"The rye\"");
        var kind = entry.Kind();
        var own = Own(entry, kind, fits);
        return kind is null ? null : new Bottle
        {
            Name = name,
            Kind = kind,
            Strength = own.Strength,
            SugarGPerL = own.Sugar,
            AcidGPerL = own.Acid,
            Size = Volume.FromMillilitres(size),
            Left = Volume.FromMillilitres(entry.Number("left_ml", 0, 1e6, "mL", "500") ?? size),
            Price = price,
            Currency = currency,
            Note = entry["note"],
        };
    }

    private static HouseMade? HouseMadeOf(Entry entry, bool fits)
    {
        var name = entry.Needed("name", "\"rich syrup\"");
        var kind = entry.Kind();
        var own = Own(entry, kind, fits);
        var (made, useBy) = (entry.Day("made"), entry.Day("use_by"));
        if (useBy < made) entry.Bad("use_by", "The use-by day lies before the day it was made.", "Check both days.");
        return kind is null ? null : new HouseMade
        {
            Name = name,
            Kind = kind,
            Strength = own.Strength,
            SugarGPerL = own.Sugar,
            AcidGPerL = own.Acid,
            Left = Volume.FromMillilitres(entry.NumberNeeded("left_ml", 0, 1e6, "mL", "300")),
            Made = made,
            UseBy = useBy,
            Note = entry["note"],
        };
    }

    private static (Strength? Strength, double? Sugar, double? Acid) Own(Entry entry, Kind? kind, bool fits)
    {
        var strength = entry.Number("strength_percent", 0, 100, "% by volume", "40");
        var sugar = entry.Number("sugar_g_l", 0, 2000, "g/L", "250");
        var acid = entry.Number("acid_g_l", 0, 1000, "g/L", "60");
        if (fits && (strength ?? sugar ?? acid) is not null && kind is not null && kind.With(strength, sugar, acid) is null)
        {
            var first = strength is not null ? "strength_percent" : sugar is not null ? "sugar_g_l" : "acid_g_l";
            entry.Bad(first, string.Create(CultureInfo.InvariantCulture,
                $"So much does not go into one litre: {strength ?? kind.Strength.Band.Typical:0.#} % alcohol, {sugar ?? kind.Sugar.Band.Typical:0.#} g sugar, {acid ?? kind.Acid.Band.Typical:0.#} g acid."),
                "Check strength, sugar and acid against the label.");
        }

        return (strength is { } percent ? Strength.FromPercent(percent) : null, sugar, acid);
    }

    private static Measure MeasureOf(Entry entry)
    {
        var (name, unit) = (entry.Needed("name", "\"big jigger\""), entry.OneOf("unit", "oz", "ml"));
        var step = entry.NumberNeeded("step", 0.001, 1000, unit, unit == "oz" ? "0.25" : "5");
        var eye = entry.Number("eye_step", 0.001, 1000, unit, unit == "oz" ? "0.125" : "2.5") ?? step;
        var largest = entry.NumberNeeded("largest", 0.001, 10000, unit, unit == "oz" ? "2" : "50");
        if (entry.Problems.Count == 0 && eye > step) entry.Bad("eye_step", "The step by eye is larger than the step between marks.", "Swap them, or leave the step by eye out.");
        if (entry.Problems.Count == 0 && largest < step) entry.Bad("largest", "The largest mark is smaller than the step between marks.", "Check both.");
        return new Measure(name, unit, step, eye, largest);
    }

    // A spec is its text. What is already kept must open even when reading has changed since: then the text stands in its notes.
    private static Spec? SpecOf(Entry entry, bool strict)
    {
        var title = entry.Needed("spec", "Daiquiri");
        var draft = Draft.Read(entry["text"], Kinds.Catalogue);
        if (draft.Specs.Count == 1 && (!strict || draft.Problems.Count == 0))
        {
            if (strict && !draft.Specs[0].Title.Equals(title, StringComparison.OrdinalIgnoreCase))
                entry.Bad("spec", $"The title '{title}' is not the title in the text, '{draft.Specs[0].Title}'.", "Write the same title in both.");
            return draft.Specs[0] with { Title = title };
        }

        if (!strict) return new Spec { Title = title, Notes = entry["text"].Split('\n') };
        foreach (var problem in draft.Problems) entry.Bad("text", $"In the spec {title}, line {problem.Line}: {problem.What}", problem.Try);
        if (draft.Problems.Count == 0) entry.Bad("text", $"The text of {title} holds {draft.Specs.Count} specs.", "Write one spec in each row.");
        return null;
    }
}

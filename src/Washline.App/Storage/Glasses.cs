using Washline.Drinks;
using static System.FormattableString;

namespace Washline.App.Storage;

/// <summary>A glass from its entry; measures that do not go together are a problem that says what such a glass would hold.</summary>
internal static class Glasses
{
    /// <summary>The glass; nothing when there are problems, which the entry then holds.</summary>
    /// <param name="entry">The words.</param>
    /// <param name="fits">Whether to hold the measures to one another; what is already kept is not asked again.</param>
    public static Glass? Read(Entry entry, bool fits)
    {
        var name = entry.Needed("name", "coupe");
        var shape = Enum.Parse<GlassShape>(entry.OneOf("shape", Things.Shapes), ignoreCase: true);
        var capacity = entry.NumberNeeded("capacity_ml", 20, 2000, "mL", "180");
        var rim = entry.NumberNeeded("rim_mm", 25, 200, "mm", "95");
        var depth = entry.Number("depth_mm", Glass.LeastDepthMm, Glass.MostDepthMm, "mm", "60");
        var foot = entry.Number("base_mm", 1, 300, "mm", "55");
        var count = entry.Count(1);
        if (entry.Problems.Count > 0) return null;
        if (!GoTogether(entry, shape, capacity, rim, depth, foot, fits)) (depth, foot) = (null, null);
        return entry.Problems.Count > 0 ? null : new Glass(name, shape, capacity, rim, depth, foot) { Count = count };
    }

    private static bool GoTogether(Entry entry, GlassShape shape, double capacity, double rim, double? depth, double? foot, bool tell)
    {
        if (foot is { } width && !Glass.MayHaveBase(shape, rim, width))
        {
            if (tell) entry.Bad("base_mm", Invariant($"A {Word(shape)} {rim:0.#} mm wide has no flat base of {width:0.#} mm."), "Measure the flat bottom inside, or leave it out; a glass with so wide a base is a tumbler.");
            return false;
        }

        if (depth is not { } deep) return true;
        var (least, most) = Glass.Holds(shape, rim, deep, foot);
        if (capacity >= least && capacity <= most) return true;
        if (!tell) return false;
        var upon = foot is { } flat ? Invariant($", on a base of {flat:0.#} mm,") : "";
        entry.Bad("capacity_ml", Invariant($"A {Word(shape)} {rim:0.#} mm wide and {deep:0.#} mm deep{upon} holds {Glass.UsuallyHolds(shape, rim, deep, foot):0} mL, and never more than {most:0} or less than {least:0}; not {capacity:0.#} mL."),
            "Measure again: the rim from inside to inside, the depth from the rim to the lowest point, and what goes in from a jug." + Others(shape, capacity, rim, deep, foot));
        return false;
    }

    // The shapes that would have these measures, the likeliest first.
    private static string Others(GlassShape shape, double capacity, double rim, double depth, double? foot)
    {
        var others = Enum.GetValues<GlassShape>()
            .Where(s => s != shape && (foot is not { } width || Glass.MayHaveBase(s, rim, width)))
            .Where(s => Glass.Holds(s, rim, depth, foot) is var (least, most) && capacity >= least && capacity <= most)
            .OrderBy(s => Math.Abs(Math.Log(Glass.UsuallyHolds(s, rim, depth, foot) / capacity))).Take(2).Select(Word).ToArray();
        return others.Length == 0 ? "" : $" Or its shape is another: --shape {string.Join(" or --shape ", others)} goes with these.";
    }

    private static string Word(GlassShape shape) => shape.ToString().ToLowerInvariant();
}

using System.Collections.Frozen;

namespace Washline.Drinks;

/// <summary>The glasses that specs name, each in a usual size. Sizes are common practice, no source; a home's own glasses replace them.</summary>
public static class TradeGlasses
{
    private static readonly (string[] Words, Glass Glass)[] Table =
    [
        (["nick and nora", "nick & nora", "tulip", "sherry"], new Glass("nick and nora", GlassShape.Tulip, 150, 66)),
        (["martini", "cocktail", "v glass", "cone"], new Glass("cone", GlassShape.Cone, 190, 110)),
        (["coupe", "saucer"], new Glass("coupe", GlassShape.Coupe, 180, 95)),
        (["flute"], new Glass("flute", GlassShape.Flute, 180, 50)),
        (["collins", "highball", "tall", "sling", "zombie", "fizz"], new Glass("highball", GlassShape.Tumbler, 350, 64)),
        (["wine", "balloon", "copa", "goblet", "spritz"], new Glass("wine glass", GlassShape.Balloon, 450, 70)),
        (["julep", "mug", "tin", "cup", "tiki"], new Glass("cup", GlassShape.Cup, 350, 88)),
        (["rocks", "old fashioned", "tumbler", "lowball", "whisky", "whiskey", "double"], new Glass("rocks", GlassShape.Tumbler, 300, 84)),
    ];

    private static readonly (string[] Plain, Glass Glass)[] Known = [.. Table.Select(t => (t.Words.Select(Words.Plain).ToArray(), t.Glass))];

    private static readonly FrozenDictionary<string, Glass> ByName = Table.ToFrozenDictionary(t => t.Glass.Name, t => t.Glass);

    /// <summary>One of each.</summary>
    public static IReadOnlyList<Glass> All { get; } = [.. Table.Select(t => t.Glass)];

    /// <summary>The glass that a maker's words name; without words, a coupe for a drink served up and a rocks glass for one on ice.</summary>
    public static Glass For(string words, ServedIce ice, Mixtures.Technique technique) =>
        Named(words) ?? (ice == ServedIce.None && technique is not (Mixtures.Technique.Build or Mixtures.Technique.Swizzle or Mixtures.Technique.Blend)
            ? ByName["coupe"] : ByName["rocks"]);

    /// <summary>The glass that those words name, or nothing.</summary>
    public static Glass? Named(string words)
    {
        var plain = Words.Plain(words);
        foreach (var (known, glass) in Known)
        {
            if (known.Any(k => plain.Contains(k, StringComparison.Ordinal))) return glass;
        }

        return null;
    }
}

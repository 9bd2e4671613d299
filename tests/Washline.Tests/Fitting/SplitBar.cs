using Washline.Drinks;
using Washline.Fitting;
using Washline.Measures;

namespace Washline.Tests.Fitting;

/// <summary>Small bars in which one bottle is not enough for a line.</summary>
internal static class SplitBar
{
    private static readonly Kinds All = Kinds.Catalogue;

    public static Measure Ounces { get; } = new("jigger", "oz", 0.25, 0.125, 2);

    public static Measure Millilitres { get; } = new("jigger", "ml", 5, 2.5, 60);

    public static Bottle Of(string id, double? percent = null, double leftMl = 500, string? name = null) => new()
    {
        Name = name ?? id,
        Kind = All[id],
        Strength = percent is { } p ? Strength.FromPercent(p) : null,
        Left = Volume.FromMillilitres(leftMl),
    };

    public static Bar Home(Measure measure, params Bottle[] bottles) =>
        Bar.Empty with { Bottles = [.. bottles, Of("lime-juice"), Of("simple-syrup")], Measures = [measure], Settings = new Settings("us", true) };

    public static Fit Sour(string spirit, Bar bar, Wishes? wishes = null) =>
        Fit.Find(DemoHome.Read($"Sour\n\n{spirit}\n1 oz lime juice\n¾ oz simple syrup\n\nshake 12 s\nice: none\n"), bar, All, wishes ?? Wishes.None);
}

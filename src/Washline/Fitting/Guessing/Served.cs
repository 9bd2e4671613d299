using Washline.Drinks;
using Washline.Mixtures;

namespace Washline.Fitting.Guessing;

/// <summary>How a guess is served: as most of its family, unless the person knows better.</summary>
internal static class Served
{
    public static Service Of(Family family, Style style, IReadOnlyList<Kind> kinds, bool? iceWet, Habits habits)
    {
        var usual = habits.Service(family) with { IceWet = iceWet };
        if (kinds.Any(k => k.Id == "brewed-coffee")) return With(usual, Technique.NoIce, ServedIce.None, "mug");
        return style switch
        {
            Style.Up => With(usual, usual.Technique is Technique.Shake or Technique.Stir ? usual.Technique : Cloudy(kinds) ? Technique.Shake : Technique.Stir, ServedIce.None, "coupe"),
            Style.Rocks => With(usual, usual.Technique, ServedIce.Cubes, "rocks"),
            Style.Tall => With(usual, usual.Technique == Technique.Stir ? Technique.Build : usual.Technique, ServedIce.Cubes, "highball"),
            _ => usual,
        };
    }

    private static Service With(Service usual, Technique technique, ServedIce ice, string glass) =>
        usual with { Technique = technique, Seconds = new Method(technique, null, "").UsualSeconds, ServedOn = ice, Glass = TradeGlasses.For(glass, ice, technique) };

    private static bool Cloudy(IReadOnlyList<Kind> kinds) => kinds.Any(k => Roles.Of(k) is Role.Sour or Role.Juice or Role.Egg or Role.Dairy);
}

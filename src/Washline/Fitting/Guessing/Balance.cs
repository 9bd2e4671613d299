using Washline.Drinks;
using Washline.Measures;
using Washline.Mixtures;

namespace Washline.Fitting.Guessing;

/// <summary>The served balance that a family keeps to: sweetness, sourness, strength and size in JND, with how far its drinks stray.</summary>
internal sealed class Balance
{
    /// <summary>Attributes of a sip: sugar, acid, strength, volume.</summary>
    public const int Attributes = 4;

    // As many drinks as a family must have before its own balance counts as much as that of all drinks.
    private const double Shrink = 2;

    private readonly Dictionary<Family, (double[] Middle, double[] Spread)> families = [];

    /// <summary>Learns from those specs, each served as its list says.</summary>
    public Balance(IReadOnlyList<PublicSpec> specs)
    {
        var known = specs.Where(s => s.Served is not null).ToList();
        var all = Of(known, null, null);
        foreach (var family in Enum.GetValues<Family>()) families[family] = Of([.. known.Where(k => k.Family == family)], all.Middle, all.Spread);
    }

    /// <summary>The middle of a family, and the spread of its drinks around it, in JND of each attribute.</summary>
    public (double[] Middle, double[] Spread) For(Family family) => families[family];

    /// <summary>The attributes of a sip in JND from nothing.</summary>
    public static double[] Of(Sip sip) => [Jnd.OfSugar(sip.SweetnessGPerL), Jnd.OfAcid(sip.AcidGPerL), Jnd.OfStrength(sip.StrengthPercent), Jnd.OfVolume(sip.VolumeMl)];

    /// <summary>What a public spec is when it is served; nothing where the list leaves open how much goes in.</summary>
    public static double[]? Served(IReadOnlyList<PublicLine> lines, Technique technique, ServedIce ice, string glass)
    {
        if (lines.Any(l => l.Amount is null && Roles.Of(l.Kind) == Role.Lengthener)) return null;
        var service = new Service(technique, new Method(technique, null, "").UsualSeconds, ice, false, true, TradeGlasses.For(glass, ice, technique));
        return Of(ServedDrink.Run([.. lines.Where(l => l.Millilitres is not null).Select(l => Poured(l.Kind, l.Millilitres!.Value))], service).Sip);
    }

    /// <summary>So many millilitres of a kind.</summary>
    public static Pour Poured(Kind kind, double ml) => Pour.Of(kind.Name, kind, null, null, null)! with { Millilitres = Band.Exactly(ml) };

    private static (double[] Middle, double[] Spread) Of(List<PublicSpec> drinks, double[]? all, double[]? stray)
    {
        var (middle, spread) = (new double[Attributes], new double[Attributes]);
        for (var a = 0; a < Attributes; a++)
        {
            var values = drinks.Select(d => d.Served![a]).ToList();
            var weight = all is null ? 0 : Shrink;
            middle[a] = (values.Sum() + weight * (all?[a] ?? 0)) / (values.Count + weight);
            spread[a] = Math.Sqrt((values.Sum(v => (v - middle[a]) * (v - middle[a])) + weight * Math.Pow(stray?[a] ?? 0, 2)) / (values.Count + weight));
        }

        return (middle, spread);
    }
}

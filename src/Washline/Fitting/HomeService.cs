using Washline.Drinks;
using Washline.Mixtures;

namespace Washline.Fitting;

/// <summary>How the drink is made with the tools and glasses at home, and why that differs from the maker's way.</summary>
/// <param name="Service">The service at home.</param>
/// <param name="Reasons">A sentence for everything that differs.</param>
public sealed record HomeService(Service Service, IReadOnlyList<string> Reasons)
{
    /// <summary>The maker's service, fitted by rule to the tools and glasses at home. A home that lists no tools or no glasses is taken to have them.</summary>
    /// <param name="spec">The spec.</param>
    /// <param name="asMeant">The maker's service.</param>
    /// <param name="needMl">What the glass must hold, ice included, mL.</param>
    /// <param name="bar">The home.</param>
    public static HomeService Of(Spec spec, Service asMeant, double needMl, Bar bar)
    {
        var reasons = new List<string>();
        var service = Tools(asMeant, bar, reasons);
        return new HomeService(service with { Glass = GlassFor(spec, service.Glass, needMl, bar, reasons) }, reasons);
    }

    private static Service Tools(Service service, Bar bar, List<string> reasons)
    {
        if (bar.Tools.Count == 0) return service;
        bool Has(string tool) => bar.Tools.Any(t => t.Name.Contains(tool, StringComparison.OrdinalIgnoreCase));
        switch (service.Technique)
        {
            case Technique.Blend when !Has("blender"):
                reasons.Add("No blender at home: shake hard with crushed ice and pour it in, ice and all. It is coarser than blended, and thins as it stands.");
                return service with { Technique = Technique.Shake, Seconds = 12, CrushedInside = true, ServedOn = ServedIce.Crushed };
            case Technique.Swizzle when !Has("swizzle"):
                reasons.Add("No swizzle stick at home: churn the crushed ice with a barspoon.");
                return service;
            case Technique.Shake when !Has("shaker") && !Has("tin"):
                reasons.Add("No shaker at home: a jar with a tight lid does the same.");
                return service;
            case Technique.Stir when !Has("mixing glass") && !Has("shaker"):
                reasons.Add("No mixing glass at home: stir in any tall glass or jug.");
                return service;
            default:
                return service;
        }
    }

    private static Glass GlassFor(Spec spec, Glass meant, double needMl, Bar bar, List<string> reasons)
    {
        if (bar.Glasses.Count == 0) return meant;
        var asked = spec.Glass.Length > 0 ? spec.Glass : meant.Name;
        double Penalty(Glass g) => (g.CapacityMl < needMl ? 1000 + (needMl - g.CapacityMl) : 0)
            + (g.Name.Equals(asked, StringComparison.OrdinalIgnoreCase) ? 0 : g.Shape == meant.Shape ? 40 : 160)
            + Math.Abs(g.CapacityMl - meant.CapacityMl) * (g.Shape == meant.Shape ? 0.2 : 0.5);
        var glass = bar.Glasses.OrderBy(Penalty).ThenBy(g => g.Name, StringComparer.Ordinal).First();
        if (glass.CapacityMl < needMl)
        {
            reasons.Add(FormattableString.Invariant($"No glass at home holds it: the {glass.Name} takes {glass.CapacityMl:0} mL and {needMl:0} mL are needed. Serve the rest beside it."));
        }
        else if (glass.Shape != meant.Shape)
        {
            var small = bar.Glasses.Where(g => g.Shape == meant.Shape).MaxBy(g => g.CapacityMl);
            reasons.Add(small is null ? $"No {meant.Name} at home: it goes into the {glass.Name}."
                : FormattableString.Invariant($"The {small.Name} holds {small.CapacityMl:0} mL and {needMl:0} mL are needed: it goes into the {glass.Name}."));
        }

        return glass;
    }
}

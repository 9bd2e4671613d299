using Washline.Drinks;
using Washline.Fitting.AtHome;

namespace Washline.Fitting;

/// <summary>How the drink is made with the tools, ice, glasses, measures and garnishes at home, and why that differs from the maker's way.</summary>
/// <param name="Service">The service at home.</param>
/// <param name="Reasons">One for everything that differs: what is missing, what to do, and what that does.</param>
public sealed record HomeService(Service Service, IReadOnlyList<HomeReason> Reasons)
{
    /// <summary>The maker's drink, fitted by rule to what is at home (docs/fitting.md). A home that lists nothing of a sort is taken to have it.</summary>
    /// <param name="spec">The spec.</param>
    /// <param name="asMeant">The drink as its maker serves it.</param>
    /// <param name="bar">The home.</param>
    /// <param name="kinds">The catalogue.</param>
    public static HomeService Of(Spec spec, ServedDrink asMeant, Bar bar, Kinds kinds)
    {
        var reasons = new List<HomeReason>();
        var made = HomeTools.Fit(spec, asMeant, bar, kinds, reasons);
        made = HomeGlass.Fit(spec, asMeant, made, bar, reasons);
        reasons.AddRange(HomeMeasures.Of(asMeant, bar));
        reasons.AddRange(HomeGarnish.Of(spec, bar, kinds));
        return new HomeService(made.Service, reasons);
    }
}

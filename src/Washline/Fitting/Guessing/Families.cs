using Washline.Drinks;

namespace Washline.Fitting.Guessing;

/// <summary>How a drink's family is told from what its ingredients do.</summary>
internal static class Families
{
    /// <summary>The family of a drink of those kinds.</summary>
    public static Family Of(IReadOnlyList<Kind> kinds)
    {
        bool Has(Role role) => kinds.Any(k => Roles.Of(k) == role);
        var sour = kinds.Any(Roles.Sours);
        if (Has(Role.Dairy) || kinds.Any(k => k.Id is "egg-yolk" or "whole-egg" or "egg")) return Family.Creamy;
        if (Has(Role.Sparkling)) return Family.Spritz;
        if (!Has(Role.Spirit) && (Has(Role.Wine) || Has(Role.Fortified) || Has(Role.BitterLiqueur)) && !sour) return Family.Spritz;
        if (kinds.Any(k => k.IsA("vegetable-juice"))) return Family.Highball;
        if (Has(Role.Lengthener)) return sour && Has(Role.Sweetener) ? Family.Collins : Family.Highball;
        if (sour) return Has(Role.Liqueur) || Has(Role.BitterLiqueur) ? Family.Daisy : Family.Sour;
        if (Has(Role.Juice)) return HasSugar(kinds) ? Family.Fruit : Family.Highball;
        if (Has(Role.Fortified) || Has(Role.Wine)) return Family.Stirred;
        if (Has(Role.Sweetener)) return Family.OldFashioned;
        return Has(Role.Liqueur) || Has(Role.BitterLiqueur) ? Family.Duo : Family.OldFashioned;
    }

    /// <summary>A family in words.</summary>
    public static string Name(Family family) => family switch
    {
        Family.Sour => "sour",
        Family.Daisy => "sour with a liqueur",
        Family.Collins => "long sour with soda",
        Family.Highball => "highball",
        Family.Fruit => "shaken with fruit",
        Family.Stirred => "stirred with wine",
        Family.Duo => "spirit and liqueur",
        Family.OldFashioned => "old fashioned",
        Family.Spritz => "spritz",
        _ => "creamy",
    };

    private static bool HasSugar(IReadOnlyList<Kind> kinds) => kinds.Any(k => Roles.Of(k) is Role.Liqueur or Role.BitterLiqueur or Role.Sweetener);
}

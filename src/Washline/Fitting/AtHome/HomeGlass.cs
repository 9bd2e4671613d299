using Washline.Drinks;

namespace Washline.Fitting.AtHome;

/// <summary>The glass at home that comes nearest to the maker's, by what it holds and by its shape.</summary>
internal static class HomeGlass
{
    private const double CubeG = 30; // a tray cube of 32 mm
    private const double Alike = 20; // a glass of the same build under another name
    private const double OtherShape = 90, OtherFamily = 160; // a stemmed bowl for another, a tumbler for a stem; judgement, in mL of capacity
    private const double SameBuild = 1.4; // how much slimmer or wider a glass may be and go by the same name

    /// <summary>The maker's drink in that glass. A home that lists no glasses is taken to have them all.</summary>
    public static ServedDrink Fit(Spec spec, ServedDrink asMeant, ServedDrink made, Bar bar, List<HomeReason> reasons)
    {
        if (bar.Glasses.Count == 0) return made;
        var meant = asMeant.Service.Glass;
        var asked = spec.Glass.Length > 0 ? spec.Glass : meant.Name;
        var stands = bar.Glasses.Select(g => (Glass: g, Line: Stands(made, g), Unlike: Unlike(asked, meant, g)))
            .OrderBy(s => (s.Line.Overflows ? 1000 + s.Line.OverMl : 0) + s.Unlike + (s.Line.LooksEmpty ? 60 : 0)
                + Math.Abs(s.Glass.CapacityMl - meant.CapacityMl) * (s.Unlike <= Alike ? 0.2 : 0.5))
            .ThenBy(s => s.Glass.Name, StringComparer.Ordinal).ToList();
        var (glass, line, unlike) = stands[0];
        var served = ServedDrink.Of(made.Pours, made.Service with { Glass = glass });
        if (unlike > Alike || line.Overflows) reasons.Add(Reason(spec.Glass.Length > 0 ? spec.Glass : Named(meant), new Consequence(made, served), stands.Where(s => s.Unlike <= Alike).Select(s => s.Glass).MaxBy(g => g.CapacityMl)));
        return served;
    }

    private static HomeReason Reason(string asked, Consequence change, Glass? tooSmall)
    {
        var line = change.AtHome.WashLine;
        var glass = line.Glass;
        var need = line.LiquidMl + WashLine.Displaced(change.AtHome.Serving.Served, line.IceG);
        var (why, instead) = line.Overflows
            ? ($"No glass at home holds it: the {glass.Name} takes {Told.Number(glass.CapacityMl, "0")} mL, and {Told.Number(need, "0")} mL are needed.", glass.Name)
            : tooSmall is not null
                ? ($"The {tooSmall.Name} at home takes {Told.Number(tooSmall.CapacityMl, "0")} mL and would overflow: it goes into the {glass.Name} ({Told.Number(glass.CapacityMl, "0")} mL).", glass.Name)
                : ($"No {asked} at home: it goes into the {glass.Name} ({Told.Number(glass.CapacityMl, "0")} mL).", glass.Name);
        return new HomeReason
        {
            Matter = HomeMatter.Glass,
            Rule = "glass",
            Missing = asked,
            Instead = instead,
            Why = why,
            Effect = line.Overflows ? Overflow(change.AtHome) : Standing(change),
            Consequence = change,
        };
    }

    // Less ice where that is enough, else less of what it is topped up with, else the rest beside it.
    private static string Overflow(ServedDrink drink)
    {
        var line = drink.WashLine;
        if (line.IceG > 0 && line.LiquidMl <= line.Glass.CapacityMl)
        {
            var grams = line.OverMl * line.IceG / Math.Max(1e-9, WashLine.Displaced(drink.Serving.Served, line.IceG));
            return $"Leave out {Told.Number(grams, "0")} g of the ice, {Cubes(grams)}: then it stands at the rim.";
        }

        var top = drink.Pours.Where(p => p.Line?.Amount.Unit.Kind == UnitKind.TopUp).Sum(p => p.Millilitres.Typical);
        return top >= line.OverMl ? $"Top it up with {Told.Number(line.OverMl, "0")} mL less: then it stands at the rim."
            : $"Serve the rest, {Told.Number(line.OverMl, "0")} mL, beside it, and keep that cold.";
    }

    private static string Standing(Consequence change)
    {
        var (meant, home) = (change.Meant.WashLine, change.AtHome.WashLine);
        var ice = Math.Abs(meant.IceG - home.IceG) < 5 ? ""
            : home.IceG < 0.5 ? " There is no room for ice."
            : $" It takes {Told.Number(home.IceG, "0")} g of ice where {Told.Number(meant.IceG, "0")} was meant.";
        var sip = change.DistanceJnd < 0.05 ? "" : " " + change.Words;
        return $"It stands {Told.Number(home.ToRimMm, "0")} mm below the rim, {(meant.Overflows ? "where the maker’s would overflow" : $"where {Told.Number(meant.ToRimMm, "0")} mm was meant")}{(home.LooksEmpty ? ", and looks half empty" : "")}.{ice}{sip}";
    }

    private static string Cubes(double grams) => (int)Math.Max(1, Math.Ceiling(grams / CubeG)) is 1 ? "about one cube" : $"about {Math.Ceiling(grams / CubeG):0} cubes";

    private static WashLine Stands(ServedDrink drink, Glass glass)
    {
        var serving = ServedDrink.Run(drink.Pours, drink.Service with { Glass = glass });
        return WashLine.Of(serving, glass, drink.WashLine.FoamMl);
    }

    // How unlike two glasses are, in mL of capacity that one would rather put up with.
    private static double Unlike(string asked, Glass meant, Glass glass)
    {
        if (glass.Name.Equals(asked, StringComparison.OrdinalIgnoreCase)) return 0;
        if (TradeGlasses.Named(glass.Name) is { } trade && trade == TradeGlasses.Named(asked) && trade.Shape == glass.Shape) return Alike / 2;
        if (glass.Shape == meant.Shape) return Slimmer(glass, meant) <= SameBuild ? Alike : OtherShape;
        return Stemmed(glass) == Stemmed(meant) ? OtherShape : OtherFamily;
    }

    private static double Slimmer(Glass a, Glass b)
    {
        var ratio = a.DepthMm / a.RimMm / (b.DepthMm / b.RimMm);
        return Math.Max(ratio, 1 / ratio);
    }

    private static bool Stemmed(Glass glass) => glass.Shape is not (GlassShape.Tumbler or GlassShape.Cylinder or GlassShape.Cup);

    // A cone goes by the drink it is known for.
    private static string Named(Glass glass) => glass.Shape == GlassShape.Cone && glass.Name == "cone" ? "martini glass" : glass.Name;
}

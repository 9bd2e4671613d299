using Washline.Measures;
using Washline.Mixtures;

namespace Washline.Drinks;

/// <summary>A spec's lines as pours: every amount as written becomes millilitres with a band.</summary>
public static class Written
{
    private const double TopUpMl = 90; // where no glass says how much; common practice, no source
    private const double RoomAtRim = 0.08; // share of the glass a bartender leaves free; common practice, no source

    /// <summary>The pours of a spec in its own order; lines of a kind the catalogue does not know, and pieces without a size, are left out.</summary>
    public static IReadOnlyList<Pour> Pours(Spec spec, Service service)
    {
        var pours = spec.Lines.Select(line => Of(line, spec.PartMl)).OfType<Pour>().ToList();
        var tops = spec.Lines.Count(l => l.Amount.Unit.Kind == UnitKind.TopUp && l.Kind is not null);
        if (tops == 0) return pours;
        var room = Room(pours, service) / tops;
        return pours.Select(p => p.Millilitres.Typical > 0 || p.Millilitres.High > 0 ? p : p with { Millilitres = Band.Within(room, 0.25), Last = true }).ToList();
    }

    private static Pour? Of(Line line, double partMl)
    {
        if (Pour.AsWritten(line) is not { } ingredient) return null;
        var pour = ingredient with { Line = line };
        if (line.Amount.Unit.Kind == UnitKind.TopUp) return pour with { Millilitres = Band.Exactly(0), Last = true };
        if (line.Amount.Millilitres(line.Kind, partMl) is not { } ml) return null;
        // What is floated goes on last, when the ice has done its work.
        var floated = line.Amount.Unit == Units.Float;
        return pour with { Millilitres = line.Amount.Unit.Kind is UnitKind.Poured or UnitKind.Part ? Poured(ml) : ml, Last = pour.Last || floated };
    }

    /// <summary>A jigger-poured amount with the tolerance of a home jigger: 3 %, and at least half a millilitre.</summary>
    public static Band Poured(Band ml) => Tolerance.Jigger(ml);

    private static double Room(List<Pour> pours, Service service)
    {
        if (service.Glass.CapacityMl <= 0) return TopUpMl;
        var serving = Serving.Of(ServedDrink.Sum(pours, last: false), ServedDrink.Sum(pours, last: true), service, service.IceWet ?? true, service.Seconds);
        var ice = WashLine.Displaced(serving.Served.Mass > 0 ? serving.Served : Mixture.OfWater(1), serving.IceInGlassG);
        return Math.Clamp(service.Glass.CapacityMl * (1 - RoomAtRim) - ice - serving.Served.Volume.Millilitres, 15, 400);
    }
}

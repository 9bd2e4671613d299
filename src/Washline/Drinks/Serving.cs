using Washline.Mixtures;

namespace Washline.Drinks;

/// <summary>Pours brought together, chilled and put into the glass: one run, without bands.</summary>
/// <param name="Built">The mixture before ice, what goes in last included.</param>
/// <param name="Served">The mixture in the glass.</param>
/// <param name="TemperatureC">Its temperature, °C.</param>
/// <param name="MeltG">Grams of water the ice gave.</param>
/// <param name="IceInGlassG">Grams of ice in the glass.</param>
public readonly record struct Serving(Mixture Built, Mixture Served, double TemperatureC, double MeltG, double IceInGlassG)
{
    /// <summary>The drink at the first sip.</summary>
    public Sip Sip
    {
        get
        {
            var litre = Served.Volume.Millilitres / 1000;
            return litre <= 0 ? default : new Sip(
                litre * 1000, Served.Strength.Percent, Served.Sugars.Total / litre, Served.Sugars.AsSucrose / litre, Served.Acid / litre, TemperatureC);
        }
    }

    /// <summary>Pours, first those that meet the ice and then those that go in last, served that way.</summary>
    /// <param name="first">What meets the ice.</param>
    /// <param name="last">What is poured in at the end.</param>
    /// <param name="service">How.</param>
    /// <param name="wet">Wet ice, or from the freezer.</param>
    /// <param name="seconds">How long.</param>
    public static Serving Of(Mixture first, Mixture last, Service service, bool wet, double seconds)
    {
        const double room = 20;
        var built = first + last;
        // In the glass everything meets the ice; from a shaker or mixing glass only what was in it.
        var inGlass = service.InGlass;
        var chilledPart = inGlass ? built : first;
        var start = inGlass ? Chilled.Join(first, room, last, Service.FridgeC) : room;
        var ice = service.IceFor(chilledPart.Mass, wet);
        var chilled = Chilled.By(service.Technique, chilledPart, start, ice, seconds, service.Hand.Rate(service.Technique));
        if (service.DrunkWithIce)
        {
            // The ice counts as water, in volume and in strength.
            var all = chilled.Liquid with { Water = chilled.Liquid.Water + chilled.IceLeftG };
            return new Serving(built, all + last, chilled.TemperatureC, chilled.MeltG + chilled.IceLeftG, 0);
        }

        return inGlass
            ? new Serving(built, chilled.Liquid, chilled.TemperatureC, chilled.MeltG, chilled.IceLeftG)
            : new Serving(built, chilled.Liquid + last, Chilled.Join(chilled.Liquid, chilled.TemperatureC, last, Service.FridgeC), chilled.MeltG, FreshIce(chilled.Liquid + last, service));
    }

    // Fresh ice goes in as far as the drink leaves room for it.
    private static double FreshIce(Mixture drink, Service service)
    {
        const double full = 0.95;
        var room = service.Glass.CapacityMl * full - drink.Volume.Millilitres;
        return drink.Mass <= 0 ? 0 : Math.Min(service.IceInGlass(), Math.Max(0, room) * drink.Mass / drink.Volume.Millilitres);
    }
}

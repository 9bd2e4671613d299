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
    public Sip Sip => Sip.Of(Served, TemperatureC);

    /// <summary>Pours, first those that meet the ice and then those that go in last, served that way.</summary>
    /// <param name="first">What meets the ice.</param>
    /// <param name="last">What is poured in at the end.</param>
    /// <param name="service">How.</param>
    /// <param name="wet">Wet ice, or from the freezer.</param>
    /// <param name="seconds">How long.</param>
    public static Serving Of(Mixture first, Mixture last, Service service, bool wet, double seconds)
    {
        var meeting = Meeting.Of(first, last, service, wet);
        return Of(first, last, service, meeting.After(seconds));
    }

    /// <summary>The same when what met the ice has been chilled already.</summary>
    internal static Serving Of(in Mixture first, in Mixture last, Service service, in Chilled chilled)
    {
        var served = Poured(last, service, chilled, out var celsius, out var melt);
        var ice = service.DrunkWithIce ? 0 : service.InGlass ? chilled.IceLeftG : FreshIce(served, service);
        return new Serving(first + last, served, celsius, melt, ice);
    }

    /// <summary>What is in the glass when what met the ice has been chilled already; its temperature, °C, and grams of water the ice gave.</summary>
    internal static Mixture Poured(in Mixture last, Service service, in Chilled chilled, out double celsius, out double meltG)
    {
        (celsius, meltG) = (chilled.TemperatureC, chilled.MeltG);
        if (service.DrunkWithIce)
        {
            // The ice counts as water, in volume and in strength.
            meltG += chilled.IceLeftG;
            return chilled.Liquid with { Water = chilled.Liquid.Water + chilled.IceLeftG } + last;
        }

        if (service.InGlass || last.Mass <= 0) return chilled.Liquid;
        celsius = Chilled.Join(chilled.Liquid, chilled.TemperatureC, last, Service.FridgeC);
        return chilled.Liquid + last;
    }

    // Fresh ice goes in as far as the drink leaves room for it.
    private static double FreshIce(in Mixture drink, Service service)
    {
        const double full = 0.95;
        var ice = service.IceInGlass();
        if (ice <= 0 || drink.Mass <= 0) return 0;
        var ml = drink.Volume.Millilitres;
        return Math.Min(ice, Math.Max(0, service.Glass.CapacityMl * full - ml) * drink.Mass / ml);
    }
}

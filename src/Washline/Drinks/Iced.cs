using Washline.Mixtures;

namespace Washline.Drinks;

/// <summary>A drink at the first sip with the water its ice gave.</summary>
/// <param name="Sip">The drink.</param>
/// <param name="MeltMl">Water from the ice, mL. Negative when very cold ice froze some of the drink.</param>
/// <param name="MetMl">What met the ice, mL.</param>
internal readonly record struct Iced(Sip Sip, double MeltMl, double MetMl)
{
    private const double WaterGPerMl = 0.9982; // at 20 °C

    /// <summary>Water from the ice in per cent of what met it.</summary>
    public double DilutionPercent { get; init; } = MetMl <= 0 ? 0 : 100 * MeltMl / MetMl;

    /// <summary>Pours served that way.</summary>
    public static Iced Of(Mixture first, Mixture last, Service service, bool wet, double seconds) =>
        Of(Serving.Of(first, last, service, wet, seconds), first, service);

    /// <summary>A serving; <paramref name="first"/> is what was poured before the ice.</summary>
    public static Iced Of(Serving serving, Mixture first, Service service)
    {
        var met = service.InGlass ? serving.Built : first;
        return new Iced(serving.Sip, serving.MeltG / WaterGPerMl, met.Mass <= 0 ? 0 : met.Volume.Millilitres);
    }
}

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

    /// <summary>Pours served that way, when what met the ice has been chilled already.</summary>
    public static Iced Of(in Mixture first, in Mixture last, Service service, in Chilled chilled)
    {
        var served = Serving.Poured(last, service, chilled, out var celsius, out var melt);
        return new Iced(Sip.Of(served, celsius), melt / WaterGPerMl, Met(service.InGlass ? first + last : first));
    }

    /// <summary>A serving; <paramref name="first"/> is what was poured before the ice.</summary>
    public static Iced Of(in Serving serving, in Mixture first, Service service) =>
        new(serving.Sip, serving.MeltG / WaterGPerMl, Met(service.InGlass ? serving.Built : first));

    private static double Met(in Mixture drink) => drink.Mass <= 0 ? 0 : drink.Volume.Millilitres;
}

using Washline.Mixtures;

namespace Washline.Drinks;

/// <summary>What the model of the chilling leaves uncertain, one standard deviation each. Ours, from the sensitivities in docs/physics.md.</summary>
/// <param name="TimeShare">How far the time on the ice may be off, a share of it.</param>
/// <param name="Dilution">Water from the ice, a share of what met it.</param>
/// <param name="Kelvin">Temperature, K.</param>
internal readonly record struct ChillingError(double TimeShare, double Dilution, double Kelvin)
{
    /// <summary>The errors for a technique. A hand that has been measured brings its own vigour, tin and film: what remains is the start temperature, the counting and the model.</summary>
    public static ChillingError Of(Technique technique, Hand hand) => (technique, hand.Of(technique)) switch
    {
        (Technique.Shake, null) => new(0.25, 0.05, 1.5),
        (Technique.Shake, _) => new(0.10, 0.025, 0.8),
        (Technique.Stir, null) => new(0.25, 0.08, 3.0),
        (Technique.Stir, _) => new(0.10, 0.035, 1.2),
        (Technique.Blend, _) => new(0, 0.06, 1.0),
        _ => new(0.25, 0.12, 3.0),
    };
}

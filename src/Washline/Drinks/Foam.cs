using Washline.Mixtures;

namespace Washline.Drinks;

/// <summary>The head that shaking raises on a drink: an estimate from memory, ours, and not a measurement.</summary>
public static class Foam
{
    // mL of head for each mL that is shaken; memory, our estimate: a third to double is common.
    private static readonly (string Kind, double Head)[] Raisers =
    [
        ("egg-white", 1.2), ("pasteurised-egg-white", 0.9), ("aquafaba", 1.2), ("whole-egg", 0.4), ("pineapple-juice", 0.2), ("fresh-pineapple-juice", 0.3),
    ];

    // More than so much of the drink does not stand on it; memory, our estimate.
    private const double MostOfDrink = 0.45;

    /// <summary>Millilitres of head that stand on the drink when it is poured; nil when it is not shaken or nothing in it foams.</summary>
    /// <param name="pours">What is in it.</param>
    /// <param name="service">How it is served.</param>
    /// <param name="drinkMl">The drink itself, mL.</param>
    public static double Head(IReadOnlyList<Pour> pours, Service service, double drinkMl)
    {
        if (service.Technique != Technique.Shake || service.DrunkWithIce) return 0;
        var head = 0.0;
        foreach (var pour in pours)
        {
            if (pour.Last) continue;
            foreach (var (kind, each) in Raisers)
            {
                if (pour.Kind.Id == kind) head += each * pour.Millilitres.Typical;
            }
        }

        return Math.Min(head, MostOfDrink * Math.Max(0, drinkMl));
    }
}

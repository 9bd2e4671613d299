using Washline.Measures;
using Washline.Mixtures;

namespace Washline.Drinks;

/// <summary>The factor on the calibrated rate that reproduces a person's own reading, and the band it earns.</summary>
/// <remarks>
/// Bisection on ln factor from 0.2 to 5, at the reading and at both ends of its error. Several readings are averaged by weight in ln factor; where they
/// disagree by more than their errors the band widens as they do. Nobody shakes alike to better than five per cent: no band is narrower (ours).
/// </remarks>
public sealed record Calibration
{
    private const double SameHand = 0.05; // in ln factor; judgement
    private const int Tries = 64;

    private readonly Technique technique;
    private readonly Mixture drink;
    private readonly bool wet;
    private readonly double seconds;
    private readonly Ice ice;

    /// <summary>A drink as it was shaken or stirred.</summary>
    /// <param name="technique">Shake or stir.</param>
    /// <param name="drink">What met the ice, at 20 °C.</param>
    /// <param name="wet">Wet ice, or from the freezer.</param>
    /// <param name="seconds">How long, 1 to 600 s.</param>
    /// <exception cref="ArgumentOutOfRangeException">Another technique, no drink, or a time outside that range.</exception>
    public Calibration(Technique technique, Mixture drink, bool wet, double seconds)
    {
        if (technique is not (Technique.Shake or Technique.Stir)) throw new ArgumentOutOfRangeException(nameof(technique), technique, "Only shaking and stirring have a hand of their own.");
        Door.Check(drink.Mass, 1, 5000, "Drink", "g");
        (this.technique, this.drink, this.wet) = (technique, drink, wet);
        this.seconds = Door.Check(seconds, 1, Service.MostSeconds, nameof(seconds), "s");
        var any = new Service(technique, seconds, ServedIce.None, false, wet, TradeGlasses.For("", ServedIce.None, technique));
        ice = any.IceFor(drink.Mass, wet);
    }

    /// <summary>A drink of that strength before ice, sweetened as the rates were calibrated: 130 g/L sugar and 12 g/L acid shaken, 50 g/L sugar stirred.</summary>
    /// <param name="technique">Shake or stir.</param>
    /// <param name="strength">Its strength before ice.</param>
    /// <param name="millilitres">How much there is, 10 to 2 000 mL.</param>
    /// <returns>Nothing when so much does not go into one litre.</returns>
    public static Mixture? Usual(Technique technique, Strength strength, double millilitres)
    {
        var (sugar, acid) = technique == Technique.Shake ? (130.0, 12.0) : (50.0, 0.0);
        return Composition.Of(strength, Sugars.Split(sugar, 0, 0), acid)?.Pour(Volume.FromMillilitres(millilitres));
    }

    /// <summary>What that reading would show at that factor.</summary>
    public double At(Gauged what, double factor)
    {
        var chilled = Chilled.By(technique, drink, Temperature.Room.Celsius, ice, seconds, factor);
        return what switch
        {
            Gauged.Volume => chilled.Liquid.Volume.Millilitres / drink.Volume.Millilitres,
            Gauged.Weight => chilled.Liquid.Mass / drink.Mass,
            _ => chilled.TemperatureC,
        };
    }

    /// <summary>The least and the most that any hand reaches.</summary>
    public (double Low, double High) Reach(Gauged what)
    {
        var (slow, fast) = (At(what, Hand.Least), At(what, Turn(what)));
        return (Math.Min(slow, fast), Math.Max(slow, fast));
    }

    /// <summary>The factor that reproduces the reading, with its band; nothing when no factor does, even at the end of the reading's error.</summary>
    public Band? Find(Gauge gauge)
    {
        var (low, high) = Reach(gauge.What);
        if (!double.IsFinite(gauge.Value) || gauge.Value < low - gauge.Error || gauge.Value > high + gauge.Error) return null;
        var turn = Turn(gauge.What);
        double Factor(double value) => Solve(gauge.What, Math.Clamp(value, low, high), turn);
        var (a, b) = (Factor(gauge.Value - gauge.Error), Factor(gauge.Value + gauge.Error));
        var typical = Factor(gauge.Value);
        // What lies beyond reach tells nothing about how far beyond: the band then goes to the end.
        var most = gauge.What == Gauged.Temperature ? gauge.Value - gauge.Error <= low : gauge.Value + gauge.Error >= high;
        return Wide(Math.Min(Math.Min(a, b), typical), typical, most ? Hand.Most : Math.Max(Math.Max(a, b), typical));
    }

    /// <summary>Several factors as one, averaged by weight in ln factor.</summary>
    /// <exception cref="ArgumentException">There is none.</exception>
    public static Band Together(IReadOnlyList<Band> factors)
    {
        if (factors.Count == 0) throw new ArgumentException("There is nothing to average.", nameof(factors));
        if (factors.Count == 1) return factors[0];
        var logs = factors.Select(f => (Ln: Math.Log(f.Typical), Sigma: Math.Max(SameHand, Math.Log(f.High / f.Low) / 2))).ToList();
        var weights = logs.Sum(l => 1 / (l.Sigma * l.Sigma));
        var mean = logs.Sum(l => l.Ln / (l.Sigma * l.Sigma)) / weights;
        // Readings that disagree by more than their errors widen the band (the Birge ratio).
        var disagree = Math.Sqrt(logs.Sum(l => Math.Pow((l.Ln - mean) / l.Sigma, 2)) / (logs.Count - 1));
        var sigma = Math.Max(SameHand, Math.Max(1, disagree) / Math.Sqrt(weights));
        return Wide(Math.Exp(mean - sigma), Math.Exp(mean), Math.Exp(mean + sigma));
    }

    private static Band Wide(double low, double typical, double high) => new(
        Math.Clamp(Math.Min(low, typical * Math.Exp(-SameHand)), Hand.Least, typical), typical, Math.Clamp(Math.Max(high, typical * Math.Exp(SameHand)), typical, Hand.Most));

    // A drink near balance with its ice warms again as it thins: above the coldest factor a temperature says nothing.
    private double Turn(Gauged what)
    {
        if (what != Gauged.Temperature) return Hand.Most;
        var (coldest, at) = (double.MaxValue, Hand.Most);
        for (var i = 0; i <= Tries; i++)
        {
            var factor = Hand.Least * Math.Pow(Hand.Most / Hand.Least, (double)i / Tries);
            if (At(what, factor) is var celsius && celsius < coldest) (coldest, at) = (celsius, factor);
        }

        return at;
    }

    private double Solve(Gauged what, double value, double turn)
    {
        double low = Math.Log(Hand.Least), high = Math.Log(turn);
        var rising = what != Gauged.Temperature;
        for (var i = 0; i < 40; i++)
        {
            var middle = (low + high) / 2;
            if (At(what, Math.Exp(middle)) < value == rising) low = middle;
            else high = middle;
        }

        return Math.Exp((low + high) / 2);
    }
}

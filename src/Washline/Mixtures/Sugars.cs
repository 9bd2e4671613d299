namespace Washline.Mixtures;

/// <summary>Grams of dissolved sugars.</summary>
/// <param name="Sucrose">Grams of sucrose, and of the other disaccharides counted with it.</param>
/// <param name="Glucose">Grams of glucose.</param>
/// <param name="Fructose">Grams of fructose.</param>
public readonly record struct Sugars(double Sucrose, double Glucose, double Fructose)
{
    // Sweetness per gram against sucrose. Source: relative-sweetness (textbook table; fructose as used for cold drinks,
    // between the 1.14 of 20 °C and the 1.44 of 5 °C).
    private const double GlucoseSweetness = 0.69;
    private const double FructoseSweetness = 1.2;

    /// <summary>All sugars, grams.</summary>
    public double Total => Sucrose + Glucose + Fructose;

    /// <summary>Grams of sucrose that would taste as sweet in a cold drink.</summary>
    public double AsSucrose => Sucrose + GlucoseSweetness * Glucose + FructoseSweetness * Fructose;

    /// <summary>That many grams of sugars, split by shares of the total (the rest, if any, counts as sucrose).</summary>
    public static Sugars Split(double grams, double glucoseShare, double fructoseShare) =>
        new(grams * (1 - glucoseShare - fructoseShare), grams * glucoseShare, grams * fructoseShare);

    public static Sugars operator +(Sugars a, Sugars b) =>
        new(a.Sucrose + b.Sucrose, a.Glucose + b.Glucose, a.Fructose + b.Fructose);

    public static Sugars operator *(Sugars a, double times) =>
        new(a.Sucrose * times, a.Glucose * times, a.Fructose * times);

    /// <summary>The sum, as <c>+</c>.</summary>
    public static Sugars Add(Sugars left, Sugars right) => left + right;

    /// <summary>The multiple, as <c>*</c>.</summary>
    public static Sugars Multiply(Sugars left, double right) => left * right;
}

using Washline.Measures;

namespace Washline.Mixtures;

/// <summary>Grams of dissolved sugars.</summary>
/// <param name="Sucrose">Grams of sucrose.</param>
/// <param name="Glucose">Grams of glucose.</param>
/// <param name="Fructose">Grams of fructose.</param>
/// <param name="Lactose">Grams of lactose, the sugar of milk.</param>
/// <param name="Maltose">Grams of maltose, the sugar of malt, and of the longer chains counted with it.</param>
public readonly record struct Sugars(double Sucrose, double Glucose, double Fructose, double Lactose = 0, double Maltose = 0)
{
    // Sweetness per gram against sucrose. Source: relative-sweetness (textbook table; fructose as used for cold drinks,
    // between the 1.14 of 20 °C and the 1.44 of 5 °C).
    private const double GlucoseSweetness = 0.69;
    private const double FructoseSweetness = 1.2;
    private const double LactoseSweetness = 0.3;
    private const double MaltoseSweetness = 0.4;

    /// <summary>All sugars, grams.</summary>
    public double Total => Disaccharides + Glucose + Fructose;

    /// <summary>Grams of the sugars whose molecule weighs what that of sucrose weighs: they lower the freezing point alike, gram for gram.</summary>
    public double Disaccharides => Sucrose + Lactose + Maltose;

    /// <summary>Grams of sucrose that would taste as sweet in a cold drink.</summary>
    public double AsSucrose => Sweet(FructoseSweetness);

    /// <summary>Grams of sucrose that would taste as sweet at that temperature: fruit sugar is sweeter the colder it is.</summary>
    /// <remarks>
    /// Fructose 1.44 at 5 °C, 1.14 at 20 °C, 0.79 at 60 °C, straight lines between; below 5 °C no figure was found and that of 5 °C stands. Read in
    /// textbook quotations (relative-sweetness); panels differ by ± 0.1 at 5 °C and by more at 20 °C. Cold dulls all sugars besides, which is not in it.
    /// </remarks>
    public double AsSucroseAt(Temperature temperature) => Sweet(FructoseAt(temperature.Celsius));

    /// <summary>That many grams of sugars, split by shares of the total (the rest, if any, counts as sucrose).</summary>
    public static Sugars Split(double grams, double glucoseShare, double fructoseShare, double lactoseShare = 0, double maltoseShare = 0) => new(
        grams * (1 - glucoseShare - fructoseShare - lactoseShare - maltoseShare),
        grams * glucoseShare, grams * fructoseShare, grams * lactoseShare, grams * maltoseShare);

    private double Sweet(double fructose) =>
        Sucrose + GlucoseSweetness * Glucose + fructose * Fructose + LactoseSweetness * Lactose + MaltoseSweetness * Maltose;

    private static double FructoseAt(double celsius)
    {
        const double cold = 1.44, room = 1.14, hot = 0.79;
        var t = Math.Clamp(celsius, 5, 60);
        return t < 20 ? cold + (room - cold) * (t - 5) / 15 : room + (hot - room) * (t - 20) / 40;
    }

    public static Sugars operator +(Sugars a, Sugars b) =>
        new(a.Sucrose + b.Sucrose, a.Glucose + b.Glucose, a.Fructose + b.Fructose, a.Lactose + b.Lactose, a.Maltose + b.Maltose);

    public static Sugars operator *(Sugars a, double times) =>
        new(a.Sucrose * times, a.Glucose * times, a.Fructose * times, a.Lactose * times, a.Maltose * times);

    /// <summary>The sum, as <c>+</c>.</summary>
    public static Sugars Add(Sugars left, Sugars right) => left + right;

    /// <summary>The multiple, as <c>*</c>.</summary>
    public static Sugars Multiply(Sugars left, double right) => left * right;
}

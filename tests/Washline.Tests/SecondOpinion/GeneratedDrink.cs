using Washline.Mixtures;

namespace Washline.Tests.SecondOpinion;

/// <summary>A drink and its ice, drawn from a seed; the same thousand every time.</summary>
internal sealed record GeneratedDrink(int Number, SlowDrink Drink, Technique Technique, double StartC, SlowIce Ice, double Seconds)
{
    private const int Seed = 1908;
    private static readonly Technique[] Iced = [Technique.Shake, Technique.Stir, Technique.Build, Technique.Swizzle, Technique.Blend];

    /// <summary>
    /// 0–150 mL of spirit of 0–60 % vol, 0–60 g of sugars, 0–4 g of acid, at times up to 3 g of something else; 5–25 °C;
    /// 30–400 g of ice of 8–50 mm, wet or from the freezer; 3–60 s. What its own water cannot dissolve (65 % sugar) is drawn again.
    /// </summary>
    public static IReadOnlyList<GeneratedDrink> Thousand { get; } = Draw(1000);

    public Ice Cubes => new(Ice.WeighedG, Ice.EdgeMm, Ice.Celsius);

    public override string ToString() =>
        FormattableString.Invariant($"drink {Number}: {Drink}, {Technique} from {StartC} °C for {Seconds} s, {Ice}");

    private static List<GeneratedDrink> Draw(int count)
    {
        var dice = new Random(Seed);
        var drinks = new List<GeneratedDrink>();
        while (drinks.Count < count)
        {
            var (spirit, ethanol) = Spirit(Between(dice, 0, 150), Between(dice, 0, 60));
            var sugar = Between(dice, 0, 60);
            var (first, second) = (dice.NextDouble(), dice.NextDouble());
            var (glucose, fructose) = (sugar * first * second, sugar * first * (1 - second));
            var other = dice.Next(4) == 0 ? Between(dice, 0, 3) : 0;
            var drink = new SlowDrink(spirit - ethanol, ethanol, sugar - glucose - fructose, glucose, fructose, Between(dice, 0, 4), other, 0.7 * other);
            var ice = new SlowIce(Between(dice, 30, 400), Between(dice, 8, 50), dice.Next(2) == 0 ? 0 : -18);
            var technique = Iced[dice.Next(Iced.Length)];
            var (start, seconds) = (Between(dice, 5, 25), Between(dice, 3, 60));
            if (sugar / (sugar + drink.WaterG) <= 0.65) drinks.Add(new(drinks.Count + 1, drink, technique, start, ice, seconds));
        }

        return drinks;
    }

    private static (double Grams, double EthanolG) Spirit(double millilitres, double percent)
    {
        var share = SlowEthanolWater.Share((decimal)percent);
        var grams = millilitres * (double)SlowEthanolWater.Density(share, 20m) / 1000;
        return (grams, grams * (double)share);
    }

    private static double Between(Random dice, double low, double high) => Math.Round(low + (high - low) * dice.NextDouble(), 3);
}

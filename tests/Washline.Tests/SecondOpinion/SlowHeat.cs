namespace Washline.Tests.SecondOpinion;

/// <summary>Heat in J; liquid water at 0 °C holds none.</summary>
internal static class SlowHeat
{
    /// <summary>Heat of a drink at a temperature in °C.</summary>
    public static double Of(SlowDrink drink, double celsius)
    {
        var (constant, linear, square) = Parts(drink);
        return constant + linear * celsius + square * celsius * celsius;
    }

    /// <summary>J/K at a temperature in °C.</summary>
    public static double Capacity(SlowDrink drink, double celsius)
    {
        var (_, linear, square) = Parts(drink);
        return linear + 2 * square * celsius;
    }

    /// <summary>The temperature at which the drink holds so much heat: the quadratic solved by the school formula.</summary>
    public static double TemperatureC(SlowDrink drink, double joules)
    {
        var (constant, linear, square) = Parts(drink);
        var c = constant - joules;
        return Math.Abs(square) < 1e-9 ? -c / linear : (-linear + Math.Sqrt(linear * linear - 4 * square * c)) / (2 * square);
    }

    /// <summary>J/g of ice at a temperature in °C.</summary>
    public static double OfIce(double celsius) => -333.7 + 2.10 * celsius + 0.0036 * celsius * celsius;

    private static (double Constant, double Linear, double Square) Parts(SlowDrink drink)
    {
        var m = drink.EthanolG + drink.WaterG;
        var w = drink.EthanolG / m;
        var (w2, w3, w4) = (w * w, w * w * w, w * w * w * w);
        var h0 = w * (1 - w) * (-492.893 + 1146.151 * w - 1190.715 * w2 + 671.207 * w3 - 330.524 * w4);
        var c0 = 4.203159 + 3.486056 * w - 15.874751 * w2 + 11.540108 * w3 + 3.282166 * w4;
        var c1 = -0.0019163 - 0.0835644 * w + 0.6338122 * w2 - 1.223801 * w3 + 0.7863814 * w4;
        var s = drink.SolidsG;
        return (m * h0, m * c0 + s * 1.68, m * c1 / 2 + s * 0.00375);
    }
}

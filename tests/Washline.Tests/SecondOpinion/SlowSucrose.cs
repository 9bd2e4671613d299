namespace Washline.Tests.SecondOpinion;

/// <summary>Sucrose in water by the ICUMSA SPS-4 form, term by term in decimal arithmetic.</summary>
internal static class SlowSucrose
{
    /// <summary>Row n: power of (t − 20)/100. Column m: power m + 1 of the mass share. kg/m³.</summary>
    private static readonly decimal[][] B =
    [
        [385.1761m, 135.3705m, 40.9299m, -3.9643m, 13.4853m, -17.2890m],
        [-46.2720m, -7.1720m, 1.1597m, 5.1126m, 17.5254m],
        [59.7712m, 7.2491m, 12.3630m, -35.4791m],
        [-47.2207m, -21.6977m, 27.6301m],
        [18.3184m, 12.3081m],
    ];

    /// <summary>Water in kg/m³ at a temperature in °C.</summary>
    public static decimal WaterDensity(decimal t)
    {
        var top = 999.83952m + 16.945176m * t - 0.0079870401m * t * t - 0.000046170461m * t * t * t
            + 0.00000010556302m * t * t * t * t - 0.00000000028054253m * t * t * t * t * t;
        return top / (1m + 0.016879850m * t);
    }

    /// <summary>kg/m³ at a share of sucrose by mass and a temperature in °C.</summary>
    public static decimal Density(decimal share, decimal celsius)
    {
        var sum = WaterDensity(celsius);
        var warmer = 1m;
        foreach (var row in B)
        {
            var power = share;
            foreach (var b in row)
            {
                sum += b * power * warmer;
                power *= share;
            }

            warmer *= (celsius - 20m) / 100m;
        }

        return sum;
    }

    /// <summary>mL that a gram of dissolved sugar adds at 20 °C: the volume of the solution less the volume of its water.</summary>
    public static decimal ApparentMillilitresPerGram(decimal share)
    {
        // At no sugar at all the quotient is 0/0; a millionth is near enough.
        var w = share < 0.000001m ? 0.000001m : share;
        var solution = 1000m / Density(w, 20m);
        var water = 1000m * (1m - w) / WaterDensity(20m);
        return (solution - water) / w;
    }
}

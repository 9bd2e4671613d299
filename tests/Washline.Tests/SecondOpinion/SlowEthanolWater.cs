namespace Washline.Tests.SecondOpinion;

/// <summary>Ethanol and water by the general formula of OIML R 22, term by term in decimal arithmetic.</summary>
internal static class SlowEthanolWater
{
    /// <summary>Power of the mass share of ethanol, power of (t − 20 °C), value in kg/m³. Source: OIML R 22, typed apart from data/published.</summary>
    private static readonly (int Share, int Warmer, decimal Value)[] Terms =
    [
        (0, 0, 998.2012300m),
        (1, 0, -192.9769495m),
        (2, 0, 389.1238958m),
        (3, 0, -1668.103923m),
        (4, 0, 13522.15441m),
        (5, 0, -88292.78388m),
        (6, 0, 306287.4042m),
        (7, 0, -613838.1234m),
        (8, 0, 747017.2998m),
        (9, 0, -547846.1354m),
        (10, 0, 223446.0334m),
        (11, 0, -39032.85426m),
        (0, 1, -0.20618513m),
        (0, 2, -0.0052682542m),
        (0, 3, 0.000036130013m),
        (0, 4, -0.00000038957702m),
        (0, 5, 0.0000000071693540m),
        (0, 6, -0.000000000099739231m),
        (1, 1, 0.1693443461530087m),
        (2, 1, -10.46914743455169m),
        (3, 1, 71.96353469546523m),
        (4, 1, -704.7478054272792m),
        (5, 1, 3924.090430035045m),
        (6, 1, -12101.64659068747m),
        (7, 1, 22486.46550400788m),
        (8, 1, -26055.62982188164m),
        (9, 1, 18523.73922069467m),
        (10, 1, -7420.201433430137m),
        (11, 1, 1285.617841998974m),
        (1, 2, -0.01193013005057010m),
        (2, 2, 0.2517399633803461m),
        (3, 2, -2.170575700536993m),
        (4, 2, 13.53034988843029m),
        (5, 2, -50.29988758547014m),
        (6, 2, 109.6355666577570m),
        (7, 2, -142.2753946421155m),
        (8, 2, 108.0435942856230m),
        (9, 2, -44.14153236817392m),
        (10, 2, 7.442971530188783m),
        (1, 3, -0.0006802995733503803m),
        (2, 3, 0.01876837790289664m),
        (3, 3, -0.2002561813734156m),
        (4, 3, 1.022992966719220m),
        (5, 3, -2.895696483903638m),
        (6, 3, 4.810060584300675m),
        (7, 3, -4.672147440794683m),
        (8, 3, 2.458043105903461m),
        (9, 3, -0.5411227621436812m),
        (1, 4, 0.000004075376675622027m),
        (2, 4, -0.000008763058573471110m),
        (3, 4, 0.000006515031360099368m),
        (4, 4, -0.000001515784836987210m),
        (1, 5, -0.00000002788074354782409m),
        (2, 5, 0.00000001345612883493354m),
    ];

    /// <summary>kg/m³ at a share of ethanol by mass (0 to 1) and a temperature in °C.</summary>
    public static decimal Density(decimal share, decimal celsius)
    {
        var sum = 0m;
        foreach (var (p, t, value) in Terms)
        {
            sum += value * Power(share, p) * Power(celsius - 20m, t);
        }

        return sum;
    }

    /// <summary>% vol at 20 °C: volume of pure ethanol (789.24 kg/m³) in the volume of the mixture.</summary>
    public static decimal Percent(decimal share) => 100m * share * Density(share, 20m) / 789.24m;

    /// <summary>The share by mass that has this strength at 20 °C, by halving.</summary>
    public static decimal Share(decimal percent)
    {
        var (low, high) = (0m, 1m);
        for (var i = 0; i < 60; i++)
        {
            var middle = (low + high) / 2m;
            if (Percent(middle) < percent) low = middle;
            else high = middle;
        }

        return (low + high) / 2m;
    }

    /// <summary>mL at 20 °C of so many grams of ethanol and of water.</summary>
    public static decimal Millilitres(decimal ethanolG, decimal waterG)
    {
        var grams = ethanolG + waterG;
        return grams == 0m ? 0m : 1000m * grams / Density(ethanolG / grams, 20m);
    }

    private static decimal Power(decimal x, int n)
    {
        var product = 1m;
        for (var i = 0; i < n; i++) product *= x;
        return product;
    }
}

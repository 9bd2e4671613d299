using Washline.Mixtures;

namespace Washline.Tests.SecondOpinion;

/// <summary>A drink as grams, with its volume, strength and freezing point worked the long way.</summary>
internal sealed record SlowDrink(
    double WaterG, double EthanolG, double SucroseG, double GlucoseG, double FructoseG, double AcidG, double OtherG = 0, double OtherMl = 0)
{
    public double SugarG => SucroseG + GlucoseG + FructoseG;

    /// <summary>What holds heat beside ethanol and water: sugars and acids as published, and the rest, taken alike.</summary>
    public double SolidsG => SugarG + AcidG + OtherG;

    public double MassG => WaterG + EthanolG + SolidsG;

    public SlowDrink WithWater(double grams) => this with { WaterG = WaterG + grams };

    /// <summary>Both in one glass.</summary>
    public SlowDrink And(SlowDrink other) => new(
        WaterG + other.WaterG, EthanolG + other.EthanolG, SucroseG + other.SucroseG, GlucoseG + other.GlucoseG, FructoseG + other.FructoseG,
        AcidG + other.AcidG, OtherG + other.OtherG, OtherMl + other.OtherMl);

    /// <summary>The same drink for the library.</summary>
    public Mixture Poured => new(WaterG, EthanolG, new Sugars(SucroseG, GlucoseG, FructoseG), AcidG, OtherG, OtherMl);

    /// <summary>mL at 20 °C: ethanol and water, then the sugar by its apparent volume, acid at 0.6 mL/g, and the rest as it is.</summary>
    public double VolumeMl
    {
        get
        {
            var (water, ethanol, sugar, acid) = ((decimal)WaterG, (decimal)EthanolG, (decimal)SugarG, (decimal)AcidG);
            var all = water + ethanol + sugar + acid;
            var volume = SlowEthanolWater.Millilitres(ethanol, water);
            if (all > 0m) volume += sugar * SlowSucrose.ApparentMillilitresPerGram(sugar / all);
            volume += 0.6m * acid;
            volume += (decimal)OtherMl;
            return (double)volume;
        }
    }

    /// <summary>% vol at 20 °C.</summary>
    public double StrengthPercent => 100 * EthanolG / 0.78924 / VolumeMl;

    /// <summary>
    /// Freezing point in °C by the equation, but never below −60 °C. The floor is the library's own and in no source: the ice line
    /// is published for −30 to 0 °C, and only syrups of strong spirit come near it.
    /// </summary>
    public double FreezingC => Math.Max(-60, FreezingByEquationC);

    /// <summary>−ln of the activity of water summed over what is dissolved, then read off the ice line.</summary>
    private double FreezingByEquationC
    {
        get
        {
            var kg = WaterG / 1000;
            var simple = GlucoseG + FructoseG;
            var ethanolPerKg = EthanolG / 46.068 / kg;
            var solidsPerKg = SucroseG / 342.296 / kg + 0.55 * simple / 180.156 / kg + AcidG / 192.12 / kg;

            var y = OfEthanol(100 * EthanolG / (EthanolG + WaterG));
            y += Norrish(SucroseG, 342.296, 7.0);
            y += Norrish(simple, 180.156, 2.3);
            y += Norrish(AcidG, 192.12, 6.2);
            y += 0.018015 * Math.Sqrt(7.45e-4 * AcidG / 192.12 / kg);
            y += 0.018015 * 0.10 * ethanolPerKg * solidsPerKg;
            return -103.192146 * y + 5.340686 * Math.Pow(y, 2) - 3.543018 * Math.Pow(y, 3);
        }
    }

    public override string ToString() => FormattableString.Invariant(
        $"{WaterG:0.####} g water, {EthanolG:0.####} ethanol, {SucroseG:0.####} sucrose, {GlucoseG:0.####} glucose, {FructoseG:0.####} fructose, {AcidG:0.####} acid, {OtherG:0.####} other");

    private double Norrish(double grams, double molar, double k)
    {
        var x = grams / molar / (grams / molar + WaterG / 18.01528);
        return -Math.Log(1 - x) + k * Math.Pow(x, 2);
    }

    private static double OfEthanol(double massPercent)
    {
        var u = Math.Min(massPercent, 60) / 10;
        var t = -(4.03751 * u - 0.503964 * Math.Pow(u, 2) + 1.074229 * Math.Pow(u, 3) - 0.255881 * Math.Pow(u, 4) + 0.017805 * Math.Pow(u, 5));
        return -(9.690361e-3 * t - 4.920967e-6 * Math.Pow(t, 2) - 3.004314e-8 * Math.Pow(t, 3));
    }
}

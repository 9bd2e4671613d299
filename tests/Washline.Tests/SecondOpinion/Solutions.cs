using Washline.Measures;
using Washline.Mixtures;
using Washline.Tests.Published;

namespace Washline.Tests.SecondOpinion;

/// <summary>Densities and strengths, point by point over their tables' ranges.</summary>
public class Solutions
{
    [Fact]
    public void Density_of_ethanol_and_water_agrees_with_a_second_opinion()
    {
        var density = New("density of ethanol and water", "kg/m³");
        for (var share = 0m; share <= 1m; share += 0.01m)
        {
            for (var t = -20m; t <= 40m; t += 2.5m)
            {
                var first = EthanolWater.Density((double)share, Temperature.FromCelsius((double)t)).KilogramsPerCubicMetre;
                density.Add($"share {share} at {t} °C", first, (double)SlowEthanolWater.Density(share, t), 1e-6);
            }
        }

        density.Hold();
    }

    [Fact]
    public void Strength_and_mass_share_agree_with_a_second_opinion()
    {
        var strength = New("strength", "% vol");
        var share = New("mass share", "g/g");
        for (var percent = 0m; percent <= 100m; percent += 0.25m)
        {
            var second = SlowEthanolWater.Share(percent);
            share.Add($"{percent} % vol", EthanolWater.MassFraction(Strength.FromPercent((double)percent)), (double)second, 1e-8);
            strength.Add($"mass share {second}", EthanolWater.Strength((double)second).Percent, (double)SlowEthanolWater.Percent(second), 1e-6);
        }

        share.Hold();
        strength.Hold();
    }

    [Fact]
    public void Density_of_a_syrup_agrees_with_a_second_opinion()
    {
        var density = New("density of a syrup", "kg/m³");
        for (var share = 0m; share <= 0.85m; share += 0.01m)
        {
            for (var t = 0m; t <= 60m; t += 5m)
            {
                var first = SucroseSolution.Density((double)share, Temperature.FromCelsius((double)t)).KilogramsPerCubicMetre;
                density.Add($"share {share} at {t} °C", first, (double)SlowSucrose.Density(share, t), 1e-6);
            }
        }

        density.Hold();
    }

    [Fact]
    public void Room_taken_by_dissolved_sugar_agrees_with_a_second_opinion()
    {
        var room = New("apparent volume", "mL/g");
        for (var share = 0m; share <= 0.80m; share += 0.005m)
        {
            room.Add($"share {share}", SucroseSolution.ApparentVolume((double)share), (double)SlowSucrose.ApparentMillilitresPerGram(share), 1e-5);
        }

        room.Hold();
    }

    private static Residuals New(string what, string unit) => new(AThousandDrinks.Folder, what, unit, Residuals.SecondImplementation);
}

using Washline.Measures;
using Washline.Mixtures;

namespace Washline.Tests.SecondOpinion;

/// <summary>Densities and strengths, point by point over their tables' ranges.</summary>
public class Solutions
{
    [Fact]
    public void Density_of_ethanol_and_water_agrees_with_a_second_opinion()
    {
        var density = new Agreement("density of ethanol and water", "kg/m³", 1e-6);
        for (var share = 0m; share <= 1m; share += 0.01m)
        {
            for (var t = -20m; t <= 40m; t += 2.5m)
            {
                var first = EthanolWater.Density((double)share, Temperature.FromCelsius((double)t)).KilogramsPerCubicMetre;
                density.Compare(first, (double)SlowEthanolWater.Density(share, t), $"share {share} at {t} °C");
            }
        }

        density.MustHold();
    }

    [Fact]
    public void Strength_and_mass_share_agree_with_a_second_opinion()
    {
        var strength = new Agreement("strength", "% vol", 1e-6);
        var share = new Agreement("mass share", "g/g", 1e-8);
        for (var percent = 0m; percent <= 100m; percent += 0.25m)
        {
            var second = SlowEthanolWater.Share(percent);
            share.Compare(EthanolWater.MassFraction(Strength.FromPercent((double)percent)), (double)second, $"{percent} % vol");
            strength.Compare(EthanolWater.Strength((double)second).Percent, (double)SlowEthanolWater.Percent(second), $"mass share {second}");
        }

        share.MustHold();
        strength.MustHold();
    }

    [Fact]
    public void Density_of_a_syrup_agrees_with_a_second_opinion()
    {
        var density = new Agreement("density of a syrup", "kg/m³", 1e-6);
        for (var share = 0m; share <= 0.85m; share += 0.01m)
        {
            for (var t = 0m; t <= 60m; t += 5m)
            {
                var first = SucroseSolution.Density((double)share, Temperature.FromCelsius((double)t)).KilogramsPerCubicMetre;
                density.Compare(first, (double)SlowSucrose.Density(share, t), $"share {share} at {t} °C");
            }
        }

        density.MustHold();
    }

    [Fact]
    public void Room_taken_by_dissolved_sugar_agrees_with_a_second_opinion()
    {
        var room = new Agreement("apparent volume", "mL/g", 1e-5);
        for (var share = 0m; share <= 0.80m; share += 0.005m)
        {
            room.Compare(SucroseSolution.ApparentVolume((double)share), (double)SlowSucrose.ApparentMillilitresPerGram(share), $"share {share}");
        }

        room.MustHold();
    }
}

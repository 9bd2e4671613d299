using Washline.Tests.Drinks;
using Washline.Tests.SecondOpinion;

namespace Washline.Tests.Published;

public class PhysicsPage
{
    private static readonly Lazy<IReadOnlyList<Residuals>> Measured = new(() =>
    [
        EthanolWaterTables.Coefficients(), EthanolWaterTables.Densities("perry"), EthanolWaterTables.Densities("nbs"),
        EthanolWaterTables.Densities("oiml"), EthanolWaterTables.Gravities(), EthanolWaterTables.WaterParts(),
        .. EthanolWaterTables.Examples(), SugarTables.Densities(), SugarTables.GramsPerMillilitre(), SugarTables.Gravities(), SugarTables.Sweetness(),
        SweetenedSpirits.Densities(), SweetenedSpirits.Rule(), SweetenedSpirits.Hidden(),
        FreezingTables.EthanolToForty(), FreezingTables.SucroseToFifty(),
        FreezingTables.Ethanol("melinder"), FreezingTables.Ethanol("seccool"), FreezingTables.Ethanol("lange"), FreezingTables.Sucrose(),
        HeatTables.Capacities(), HeatTables.IceCapacities(), HeatTables.Mixing("larkin"), HeatTables.Mixing("carried"),
        BarTemperatures.Measured("shake"), BarTemperatures.Measured("stir"), BarTemperatures.Measured("serve"), SlushTables.Spirits(), SlushTables.Syrups(), TradeTables.CitricEquivalents(), TradeTables.Ounce(),
        ChillingTables.Melt(), ChillingTables.MeltAsTheyWalked(), ChillingTables.Temperatures(), ChillingTables.TemperaturesAsTheyWalked(), ChillingTables.Freezings(), ChillingTables.Heats(),
        ChillingTables.BlendTemperature(), ChillingTables.BlendMelt(), ChillingTables.BlendIce(), BandsByChance.Ends, .. AThousandDrinks.All,
    ]);

    public static IReadOnlyList<Residuals> Checks => Measured.Value;

    [Fact]
    public void Every_published_table_is_held_against_the_program()
    {
        var tests = string.Concat(Directory.EnumerateFiles(House.Path("tests"), "*.cs", SearchOption.AllDirectories).Select(File.ReadAllText));
        var unused = Directory.EnumerateFiles(House.Path("data", "published")).Select(Path.GetFileName)
            .Where(name => !tests.Contains($"\"{name}\"", StringComparison.Ordinal)).ToList();
        Assert.True(unused.Count == 0, "No test reads " + string.Join(", ", unused));
    }
}

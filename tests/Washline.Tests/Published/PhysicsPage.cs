namespace Washline.Tests.Published;

public class PhysicsPage
{
    private static IEnumerable<Residuals> Checks =>
    [
        EthanolWaterTables.Coefficients(), EthanolWaterTables.Densities(), EthanolWaterTables.Gravities(), EthanolWaterTables.WaterParts(),
        EthanolWaterTables.Examples(), SugarTables.Densities(), SugarTables.GramsPerMillilitre(), SugarTables.Gravities(), SugarTables.Sweetness(),
        FreezingTables.Ethanol("melinder"), FreezingTables.Ethanol("seccool"), FreezingTables.Ethanol("lange"), FreezingTables.Sucrose(),
        HeatTables.Capacities(), HeatTables.IceCapacities(), HeatTables.Mixing("larkin"), HeatTables.Mixing("carried"),
        BarTemperatures.Measured("shake"), BarTemperatures.Measured("stir"), TradeTables.CitricEquivalents(), TradeTables.Ounce(),
        ChillingTables.Melt(), ChillingTables.Temperatures(), ChillingTables.Freezings(), ChillingTables.Heats(),
        ChillingTables.BlendTemperature(), ChillingTables.BlendMelt(), ChillingTables.BlendIce(),
    ];

    [Fact]
    public void The_physics_page_tells_every_residual_as_measured()
    {
        var page = File.ReadAllText(House.Path("docs", "physics.md"));
        var missing = Checks.Select(c => c.Line).Where(line => !page.Contains(line, StringComparison.Ordinal)).ToList();
        Assert.True(missing.Count == 0, "docs/physics.md lacks these lines; put them in:\n" + string.Join('\n', missing));
    }

    [Fact]
    public void Every_published_table_is_held_against_the_program()
    {
        var tests = string.Concat(Directory.EnumerateFiles(House.Path("tests"), "*.cs", SearchOption.AllDirectories).Select(File.ReadAllText));
        var unused = Directory.EnumerateFiles(House.Path("data", "published")).Select(Path.GetFileName)
            .Where(name => !tests.Contains($"\"{name}\"", StringComparison.Ordinal)).ToList();
        Assert.True(unused.Count == 0, "No test reads " + string.Join(", ", unused));
    }
}

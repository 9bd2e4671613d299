using Washline.App.Storage;
using Washline.Tests.Storage;

namespace Washline.Tests.Commands;

public sealed class MeasuredGlassCommands : IDisposable
{
    private readonly TempHome home = new();

    public void Dispose() => home.Dispose();

    private Typed Add(string name, string shape, params string[] measures) => home.Run(["bar", "add", "glass", name, "--shape", shape, .. measures]);

    [Fact]
    public void Rim_depth_and_capacity_are_all_kept()
    {
        Assert.Equal(0, Add("Vee", "cone", "--rim", "92mm", "--depth", "6.2cm", "--capacity", "145ml").Exit);
        Assert.Equal(0, Add("Pot", "tumbler", "--rim", "80", "--depth", "90", "--base", "66", "--capacity", "400ml").Exit);
        var (pot, vee) = (BarFile.Open(home.Bar).Load().Glasses[0], BarFile.Open(home.Bar).Load().Glasses[1]);
        Assert.Equal((92, 62, 145), (vee.RimMm, vee.DepthMm, vee.CapacityMl));
        Assert.Equal((80, 90, 66, 400), (pot.RimMm, pot.DepthMm, pot.BaseMm, pot.CapacityMl));
        Assert.Contains("\"depthMm\": 62", home.Run("bar", "list", "glasses", "--json").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Measures_that_do_not_go_together_are_refused_with_what_to_measure_again()
    {
        var answer = Add("Vee", "cone", "--rim", "92mm", "--depth", "60mm", "--capacity", "250ml");
        Assert.Equal(1, answer.Exit);
        Assert.Contains("A cone 92 mm wide and 60 mm deep holds 133 mL, and never more than 153 or less than 114; not 250 mL.", answer.Error, StringComparison.Ordinal);
        Assert.Contains("Measure again: the rim from inside to inside, the depth from the rim to the lowest point, and what goes in from a jug. Or its shape is another: --shape ", answer.Error, StringComparison.Ordinal);
        Assert.Empty(BarFile.Open(home.Bar).Load().Glasses);
        Assert.Contains("A coupe 95 mm wide has no flat base of 90 mm.", Add("Coup", "coupe", "--rim", "95", "--depth", "40", "--base", "90", "--capacity", "180ml").Error, StringComparison.Ordinal);
        Assert.Contains("The depth 'deep' could not be read.", Add("Coup", "coupe", "--rim", "95", "--depth", "deep", "--capacity", "180ml").Error, StringComparison.Ordinal);
        Assert.Contains("The depth of 4 mm is not from 10 to 500 mm.", Add("Coup", "coupe", "--rim", "95", "--depth", "4", "--capacity", "180ml").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_shape_that_is_proposed_goes_in()
    {
        var proposed = Add("Vee", "cone", "--rim", "92mm", "--depth", "60mm", "--capacity", "250ml").Error.Split("--shape ")[1].Split(' ')[0];
        Assert.Equal(0, Add("Vee", proposed, "--rim", "92mm", "--depth", "60mm", "--capacity", "250ml").Exit);
    }

    [Fact]
    public void A_depth_is_changed_and_taken_back()
    {
        Add("Vee", "cone", "--rim", "92mm", "--depth", "62mm", "--capacity", "145ml");
        Assert.Equal(1, home.Run("bar", "change", "Vee", "--capacity", "300ml").Exit);
        Assert.Equal(0, home.Run("bar", "change", "Vee", "--capacity", "140ml").Exit);
        Assert.Equal((62, 140), (BarFile.Open(home.Bar).Load().Glasses[0].DepthMm, BarFile.Open(home.Bar).Load().Glasses[0].CapacityMl));
        Assert.Equal(0, home.Run("bar", "change", "Vee", "--depth", "").Exit);
        Assert.Equal(3 * 140_000 / (Math.PI * 46 * 46), BarFile.Open(home.Bar).Load().Glasses[0].DepthMm, 1e-6);
    }
}

using System.Text.Json;
using Washline.Tests.Storage;

namespace Washline.Tests.Commands;

public sealed class PourMore : IDisposable
{
    private readonly TempHome home = new();

    public PourMore() => Assert.Equal(0, home.Run("demo").Exit);

    public void Dispose() => home.Dispose();

    [Fact]
    public void More_adds_what_instruments_would_say()
    {
        var (plain, more) = (home.Run("pour", "Daiquiri"), home.Run("pour", "Daiquiri", "--more"));
        Assert.Equal((0, ""), (more.Exit, more.Error));
        Assert.DoesNotContain("hydrometer", plain.Out, StringComparison.Ordinal);
        Golden.Check("pour-more", more.Out);
    }

    [Fact]
    public void Egg_white_leaves_no_pH_and_says_why() =>
        Assert.Contains("No pH with egg", home.Run("pour", home.Write("egg.txt", "Egg Sour\n\n60 ml gin\n30 ml lemon juice\n20 ml simple syrup\n1 egg white\n\nshake\n"), "--more").Out, StringComparison.Ordinal);

    [Fact]
    public void Json_has_more_only_when_asked()
    {
        Assert.False(JsonDocument.Parse(home.Run("pour", "Daiquiri", "--json").Out).RootElement.TryGetProperty("more", out _));
        var more = JsonDocument.Parse(home.Run("pour", "Daiquiri", "--json", "--more").Out).RootElement.GetProperty("more");
        Assert.Equal(
            "densityKgPerM3 brix refractometerBrix hydrometerPercent hiddenProofByRule sweetnessGPerL acidGPerL pH noPH saltGPerL kilocalories outOfRange".Split(' '),
            more.EnumerateObject().Select(p => p.Name));
        Assert.InRange(more.GetProperty("pH").GetProperty("typical").GetDouble(), 2, 3.2);
    }
}

using System.Text.Json;
using Washline.Tests.Storage;

namespace Washline.Tests.Commands;

/// <summary>Absurd drinks through the program, with everything it can say of them.</summary>
public sealed class PourAbsurd : IDisposable
{
    private static readonly string[] Methods = ["shake", "stir", "build over ice", "swizzle with crushed ice", "blend with ice", "pour without ice"];

    private readonly TempHome home = new();

    public void Dispose() => home.Dispose();

    [Theory]
    [InlineData("60 ml neutral spirit (96 %)", "shake", "what meets this ice has 96 %, and the rate for 40 % is taken.")]
    [InlineData("60 ml neutral spirit (96 %)", "pour without ice", "end at 60 % alcohol by mass; this holds 94 %")]
    [InlineData("90 ml lime juice\n90 ml pineapple juice", "stir", "what meets this ice has 0 %, and the rate for 12.5 % is taken.")]
    [InlineData("60 ml rich syrup (3:1)", "pour without ice", "end at 64.3 % sugar in water; this holds 75 %")]
    [InlineData("5 tsp granulated sugar", "pour without ice", "There is no water in it")]
    [InlineData("6 tsp citric acid\n30 ml water", "pour without ice", "hold to 6 % acid in water; this holds 47 %")]
    [InlineData("10 tsp salt\n60 ml water", "pour without ice", "were set to 20 % salt")]
    [InlineData("5 l gin\n1 l lemon juice", "shake", "No more than 5 kg of ice")]
    [InlineData("60 ml gin", "stir 600 s", "for more than 600 s")]
    public void Outside_the_range_of_the_model_the_sheet_says_so(string lines, string method, string sentence)
    {
        var spec = home.Write("odd.txt", $"Odd Drink\n\n{lines}\n\nmethod: {method}\n");
        var (sheet, json) = (home.Run("pour", spec, "--more"), home.Run("pour", spec, "--more", "--json"));
        Assert.Equal((0, ""), (sheet.Exit, sheet.Error));
        Assert.Contains(sentence, sheet.Out, StringComparison.Ordinal);
        using var read = JsonDocument.Parse(json.Out);
        Assert.Contains(read.RootElement.GetProperty("more").GetProperty("outOfRange").EnumerateArray(), s => s.GetString()!.Contains(sentence, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("60 ml rum\n22.5 ml lime juice\n15 ml simple syrup", "shake")]
    [InlineData("60 ml gin\n15 ml dry vermouth", "stir")]
    [InlineData("50 ml gin\ntop up tonic water", "build over ice")]
    [InlineData("60 ml rum\n30 ml cream", "blend with ice")]
    public void An_ordinary_drink_is_within_every_range(string lines, string method)
    {
        var json = home.Run("pour", home.Write("plain.txt", $"Plain Drink\n\n{lines}\n\nmethod: {method}\n"), "--more", "--json");
        using var read = JsonDocument.Parse(json.Out);
        Assert.Empty(read.RootElement.GetProperty("more").GetProperty("outOfRange").EnumerateArray());
    }

    [Theory]
    [InlineData("1 drop gin")]
    [InlineData("5 l gin\n1 l lemon juice")]
    [InlineData("60 ml neutral spirit (96 %)")]
    [InlineData("60 ml gin (100 %)")]
    [InlineData("60 ml rich syrup (3:1)")]
    [InlineData("5 tsp granulated sugar")]
    [InlineData("10 tsp salt")]
    [InlineData("6 tsp citric acid")]
    [InlineData("3 egg whites")]
    [InlineData("200 ml cream")]
    [InlineData("90 ml lime juice")]
    [InlineData("top up soda water")]
    [InlineData("30 ml glowing moon jelly")]
    [InlineData("")]
    public void Every_number_of_an_absurd_drink_could_be_true(string lines)
    {
        foreach (var method in Methods)
        {
            foreach (var glass in new[] { "coupe", "flute", "highball with ice cubes" })
            {
                foreach (var ice in new[] { "wet", "freezer" })
                {
                    var spec = home.Write("odd.txt", $"Odd Drink\n\n{lines}\n\nmethod: {method}\nglass: {glass}\n");
                    var (sheet, json) = (home.Run("pour", spec, "--more", "--ice", ice), home.Run("pour", spec, "--more", "--ice", ice, "--json"));
                    Assert.InRange(sheet.Exit, 0, 1);
                    Assert.DoesNotContain("NaN", sheet.Out + json.Out, StringComparison.Ordinal);
                    Assert.DoesNotContain("∞", sheet.Out + json.Out, StringComparison.Ordinal);
                    using var read = JsonDocument.Parse(json.Out);
                    if (read.RootElement.TryGetProperty("served", out var served))
                    {
                        Assert.InRange(served.GetProperty("temperatureC").GetDouble(), -60, 60);
                        Assert.InRange(served.GetProperty("strengthPercent").GetDouble(), 0, 100);
                        Assert.InRange(served.GetProperty("volumeMl").GetDouble(), 0, 1e5);
                    }

                    if (read.RootElement.TryGetProperty("more", out var more)) Assert.InRange(more.GetProperty("densityKgPerM3").GetDouble(), 780, 2200);
                }
            }
        }
    }
}

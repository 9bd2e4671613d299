using System.Text;
using System.Text.Json;
using Washline.Tests.Storage;

namespace Washline.Tests.Drinks;

/// <summary>Specs that nobody should write, and that somebody will.</summary>
public sealed class ServedOddities : IDisposable
{
    private readonly TempHome home = new();

    public void Dispose() => home.Dispose();

    private static readonly string[] Methods =
        ["shake 12 s", "stir 30 s", "build over ice", "swizzle with crushed ice", "blend with ice", "pour without ice", "stir 600 s", "stir 90 minutes", "shake 1 s"];

    public static TheoryData<string, string> Absurd
    {
        get
        {
            var data = new TheoryData<string, string>();
            (string Name, string Lines)[] specs =
            [
                ("five litres", "5 l gin\n1 l lemon juice"), ("a bath", "2000 l gin"), ("many baths", string.Concat(Enumerable.Repeat("900 l gin\n", 5))), ("the strongest", "60 ml neutral spirit (96 %)"), ("a drop", "1 drop gin"),
                ("pure syrup", "60 ml rich syrup (2:1)"), ("dry sugar", "5 tsp granulated sugar"), ("all juice", "90 ml lime juice\n90 ml pineapple juice"), ("egg white", "1 egg white"),
                ("only the top", "top up soda water"), ("two tops", "top up soda water\ntop up brut sparkling wine"), ("soda shaken", "200 ml soda water"), ("nobody knows", "30 ml glowing moon jelly\n2 dashes xyzzy"),
                ("a hundred per cent", "60 ml gin (100 %)"), ("none at all", "60 ml gin (0 %)"), ("salt", "10 tsp salt"), ("cream", "200 ml cream"), ("parts", "3 parts gin\npart: 1000 ml"),
            ];
            foreach (var (name, lines) in specs) data.Add(name, $"{lines}\n");
            data.Add("a thousand lines", new StringBuilder().Insert(0, "5 ml gin\n2 ml lime juice\n", 500).ToString());
            data.Add("no lines", "");
            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Absurd))]
    public void An_absurd_spec_gives_numbers_or_an_empty_drink(string what, string lines)
    {
        Assert.NotEmpty(what);
        Assert.Equal(0, home.Run("demo").Exit);
        foreach (var method in what == "a thousand lines" ? Methods[..1] : Methods)
        {
            var file = home.Write("odd.txt", $"Odd Drink\n\n{lines}\nmethod: {method}\n");
            foreach (var (command, ice) in new[] { ("pour", "wet"), ("pour", "freezer"), ("fit", "wet") })
            {
                var sheet = home.Run(command, file, "--ice", ice);
                Assert.InRange(sheet.Exit, 0, 1);
                Assert.True(sheet.Exit == 0 || sheet.Error.StartsWith(file, StringComparison.Ordinal), sheet.Error);
                Assert.DoesNotContain("NaN", sheet.Out, StringComparison.Ordinal);
                Assert.DoesNotContain("∞", sheet.Out, StringComparison.Ordinal);
                var json = home.Run(command, file, "--ice", ice, "--json");
                using var read = JsonDocument.Parse(json.Out);
                if (command == "pour" && read.RootElement.ValueKind == JsonValueKind.Object) Sound(read.RootElement);
            }
        }
    }

    private static void Sound(JsonElement answer)
    {
        foreach (var part in new[] { "low", "served", "high" })
        {
            Assert.InRange(answer.GetProperty(part).GetProperty("strengthPercent").GetDouble(), 0, 100);
            Assert.InRange(answer.GetProperty(part).GetProperty("volumeMl").GetDouble(), 0, 1e7);
            Assert.InRange(answer.GetProperty(part).GetProperty("temperatureC").GetDouble(), -60, 60);
        }
    }
}

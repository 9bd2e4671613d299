using System.Globalization;
using System.Text.RegularExpressions;
using BenchmarkDotNet.Attributes;
using Washline.Drinks;
using Washline.Reading.Speech;

namespace Washline.Bench;

/// <summary>Reading speech: an hour of it at 150 words a minute, so that 60 over the mean in seconds is minutes of speech per second.</summary>
[MemoryDiagnoser]
public partial class Speaking
{
    private const int WordsPerHour = 150 * 60;

    private const string Talk =
        "Okay so this one is called the Slate Roof, my friend Ines Prado came up with it at the Tin Lantern. Two ounces, no, make that one and three quarters of rye whiskey. " +
        "Then three quarters of an ounce of sweet ver mooth, keep that in the fridge, it is a wine after all and people forget. The spec calls for half an ounce of falernum, but I only have orgeat. " +
        "And a couple of dashes of aromatic bitters. Stir that for about twenty five seconds while I tell you about the weather, which has been dreadful, and the neighbours, who are not. " +
        "Strain it over one big cube in a rocks glass, and garnish with a lemon twist. Right, on to the next one. ";

    private string talk = "";
    private string captions = "";

    /// <summary>The hour as a plain transcript and as rolling captions.</summary>
    [GlobalSetup]
    public void Setup()
    {
        var words = string.Concat(Enumerable.Repeat(Talk, WordsPerHour / Talk.Split(' ').Length + 1)).Split(' ')[..WordsPerHour];
        talk = string.Join(' ', words);
        var lines = words.Chunk(8).Select(c => string.Join(' ', c)).ToList();
        captions = "WEBVTT\n\n" + string.Concat(lines.Select((line, i) => $"{Time(i * 3.2)} --> {Time(i * 3.2 + 3.2)}\n{(i > 0 ? lines[i - 1] + "\n" : "")}{line}\n\n"));
    }

    /// <summary>The floor: the same hour taken apart into words, and nothing understood.</summary>
    [Benchmark(Baseline = true)]
    public int WordsOfAnHour() => Word().Count(talk);

    [Benchmark]
    public int AnHourOfTalk() => Spoken.Read(talk, Kinds.Catalogue).Specs.Count;

    [Benchmark]
    public int AnHourOfRollingCaptions() => Spoken.Read(captions, Kinds.Catalogue).Specs.Count;

    [GeneratedRegex(@"\S+")]
    private static partial Regex Word();

    private static string Time(double seconds) => TimeSpan.FromSeconds(seconds).ToString(@"hh\:mm\:ss\.fff", CultureInfo.InvariantCulture);
}

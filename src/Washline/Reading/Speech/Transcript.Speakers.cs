using System.Text.RegularExpressions;

namespace Washline.Reading.Speech;

/// <content>Who speaks: names in front of what they say, and changes of voice.</content>
internal sealed partial class Transcript
{
    private const int Shouting = 3; // capitals for every small letter; ours
    private const int FewestLines = 6;
    private const double Sentences = 0.9;

    // Names that stand in front of at least two lines, such as `NADIA:` or `Q:`.
    private static HashSet<string> Speakers(IReadOnlyList<SourceLine> lines)
    {
        var named = lines.Select(l => Labelled().Match(l.Text)).Where(m => m.Success).GroupBy(m => m.Groups["who"].Value).Where(g => g.Count() >= 2).Select(g => g.Key).ToHashSet();
        return named.Count >= 2 ? named : [];
    }

    // Captions in nothing but capitals tell no names by them.
    private static bool Shouted(IReadOnlyList<SourceLine> lines)
    {
        var (large, small) = (0, 0);
        foreach (var letter in lines.SelectMany(l => l.Text))
        {
            if (char.IsUpper(letter)) large++;
            else if (char.IsLower(letter)) small++;
        }

        return large > Shouting * small;
    }

    // Every line that begins with a word begins with a capital.
    private static bool AreSentences(IReadOnlyList<SourceLine> lines)
    {
        var first = lines.Where(l => !l.Text.Contains("-->", StringComparison.Ordinal)).Select(l => l.Text.FirstOrDefault(char.IsLetter)).Where(char.IsLetter).ToList();
        return first.Count >= FewestLines && first.Count(char.IsUpper) >= Sentences * first.Count;
    }

    // How many letters the name of a speaker takes there.
    private int Label(string text, int at)
    {
        if (speakers.Count == 0 || Labelled().Match(text) is not { Success: true } label || label.Groups["who"] is not { } who || who.Index != at || !speakers.Contains(who.Value)) return 0;
        return who.Length + 1;
    }

    private void Turn(ReadOnlySpan<char> tag)
    {
        if (!tag.StartsWith("<v", StringComparison.Ordinal) || tag[2..].IndexOf(' ') is not (>= 0 and var blank)) return;
        var now = tag[(blank + 2)..].ToString();
        if (now != voice) pause = Pause.Stop;
        voice = now;
    }

    [GeneratedRegex(@"^\s*(?:[\[(]?[\d:.,]{3,12}[\])]?\s+)?(?:-\s*|>>\s*)?(?<who>\p{Lu}[\p{L}.'’]{0,20}(?: \p{Lu}[\p{L}.'’]{0,20}){0,2}):(?=\s|$)")]
    private static partial Regex Labelled();
}

using Washline.Reading;

namespace Washline.Tests.Reading;

/// <summary>Whether an account holds every word of its text once.</summary>
public static class SpeechAccount
{
    public static void HoldsEveryWordOnce(string text, Draft draft)
    {
        var lines = text.TrimStart('\uFEFF').Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n').Split('\n');
        var seen = lines.Select(l => new int[l.Length]).ToArray();
        foreach (var entry in draft.Account)
        {
            Assert.Equal(lines[entry.Line - 1].Substring(entry.Column - 1, entry.Text.Length), entry.Text);
            for (var i = 0; i < entry.Text.Length; i++) seen[entry.Line - 1][entry.Column - 1 + i]++;
        }

        for (var line = 0; line < lines.Length; line++)
        {
            for (var at = 0; at < lines[line].Length; at++)
            {
                if (char.IsLetterOrDigit(lines[line][at]) && seen[line][at] != 1) Assert.Fail($"{line + 1}:{at + 1} “{lines[line][at]}” is accounted for {seen[line][at]} times.");
                if (seen[line][at] > 1) Assert.Fail($"{line + 1}:{at + 1} “{lines[line][at]}” is accounted for {seen[line][at]} times.");
            }
        }
    }
}

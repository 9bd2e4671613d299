using Washline.Reading;

namespace Washline.Tests.Reading;

/// <summary>What every draft of every form owes its text.</summary>
internal static class DataAccount
{
    /// <summary>Fails unless every word of the text stands in exactly one entry of the account, at its place, and every place named lies in the text.</summary>
    public static void Check(string text, Draft draft)
    {
        var lines = text.TrimStart('\uFEFF').Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n').Split('\n');
        var held = lines.Select(l => new bool[l.Length]).ToArray();
        foreach (var entry in draft.Account)
        {
            var at = entry.Column - 1;
            if (entry.Line < 1 || entry.Line > lines.Length || at < 0 || at + entry.Text.Length > lines[entry.Line - 1].Length) Assert.Fail($"{entry} lies outside the text");
            if (!lines[entry.Line - 1].AsSpan(at, entry.Text.Length).SequenceEqual(entry.Text)) Assert.Fail($"{entry} is not what stands there");
            for (var i = at; i < at + entry.Text.Length; i++)
            {
                if (held[entry.Line - 1][i]) Assert.Fail($"{entry} holds a letter that another entry holds");
                held[entry.Line - 1][i] = true;
            }
        }

        for (var line = 0; line < lines.Length; line++)
        {
            for (var i = 0; i < lines[line].Length; i++)
            {
                if (!held[line][i] && char.IsLetterOrDigit(lines[line][i])) Assert.Fail($"line {line + 1}, column {i + 1}: “{lines[line][i]}” is in no entry");
            }
        }

        foreach (var problem in draft.Problems)
        {
            Assert.InRange(problem.Line, 1, lines.Length);
            Assert.InRange(problem.Column, 1, lines[problem.Line - 1].Length + 1);
        }

        if (draft.Origins.Count == 0) return;
        Assert.Equal(draft.Specs.Count, draft.Origins.Count);
        foreach (var (spec, origins) in draft.Specs.Zip(draft.Origins))
        {
            if (origins.Count > 0) Assert.Equal(spec.Lines.Count, origins.Count);
            foreach (var origin in origins) Assert.InRange(origin.Line, 1, lines.Length);
        }
    }
}

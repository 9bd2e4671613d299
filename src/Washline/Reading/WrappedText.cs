using System.Text;
using System.Text.RegularExpressions;

namespace Washline.Reading;

/// <summary>Paragraphs that were broken into lines of like width, as in a mail or on a scanned card, put together again.</summary>
internal static partial class WrappedText
{
    private const int Narrowest = 40; // letters; shorter lines are lists, not paragraphs
    private const int NarrowestListed = 55; // letters; a line that begins with an amount is mostly all of it
    private const double Full = 0.72; // how far a line must reach into the width of its paragraph to be taken as broken off

    /// <summary>The lines with every wrapped paragraph in one; a place in it is still a place in the text.</summary>
    /// <param name="lines">The lines.</param>
    public static IReadOnlyList<SourceLine> Joined(IReadOnlyList<SourceLine> lines)
    {
        var joined = new List<SourceLine>(lines.Count);
        var (paragraph, width) = (0, 0);
        for (var i = 0; i < lines.Count;)
        {
            var end = i + 1;
            // Where nothing begins with a capital, the ends of the lines are the writer's own.
            if (IsOpen(lines[i]) && lines[i].Text.TrimStart() is [var first, ..] && !char.IsLower(first))
            {
                if (i >= paragraph) (paragraph, width) = Paragraph(lines, i);
                var length = lines[i].Text.Length;
                while (end < lines.Count && GoesOn(lines[end - 1], lines[end], width) && (length += lines[end].Text.Length + 1) <= SourceLine.Longest) end++;
            }

            joined.Add(end - i == 1 ? lines[i] : Whole([.. lines.Skip(i).Take(end - i)]));
            i = end;
        }

        return joined;
    }

    private static bool IsOpen(SourceLine line) => line is { Is: null, As: null, Places: null, IsHeading: false, IsBlank: false } && line.Text.Length <= SourceLine.Longest;

    // Where the paragraph ends, and how wide it is.
    private static (int End, int Width) Paragraph(IReadOnlyList<SourceLine> lines, int at)
    {
        var width = 0;
        for (; at < lines.Count && IsOpen(lines[at]); at++) width = Math.Max(width, lines[at].Text.TrimEnd().Length);
        return (at, width);
    }

    // A full line without an end, and one behind it that does not begin anew.
    private static bool GoesOn(SourceLine line, SourceLine next, int width)
    {
        var text = line.Text.TrimEnd();
        if (!IsOpen(next) || next.Opens || text.Length < Narrowest || text.Length < Full * width || Ends().IsMatch(text) || Begins().IsMatch(next.Text) || AmountText.Leading(next.Text, next.Text.Length - next.Text.TrimStart().Length) is not null) return false;
        if (PageText.Listed(line) && text.Length < NarrowestListed) return false;
        if (MethodText.Starts(next.Text) && (PageText.Listed(line) || char.IsUpper(next.Text.TrimStart()[0]))) return false;
        return char.IsLower(next.Text.TrimStart()[0]) || Hangs().IsMatch(text);
    }

    private static SourceLine Whole(List<SourceLine> lines)
    {
        var text = new StringBuilder();
        var parts = new List<WrappedPart>();
        foreach (var line in lines)
        {
            if (text.Length > 0 && Hyphen().IsMatch(text.ToString())) text.Length--;
            else if (text.Length > 0) text.Append(' ');
            var from = parts.Count == 0 ? 0 : line.Text.Length - line.Text.TrimStart().Length;
            parts.Add(new WrappedPart(line.Number, line.Raw, text.Length, from));
            text.Append(line.Text.AsSpan(from).TrimEnd());
        }

        return lines[0] with { Text = text.ToString(), Parts = parts };
    }

    [GeneratedRegex(@"[:;]$|[.!?][""”’)\]]?$|\s{3,}\S{1,6}$")]
    private static partial Regex Ends();

    [GeneratedRegex(@"^\s*(?:[-*•◦▪·+□☐✓>#|☰★☆©]|\(?\d{1,2}[.)]\s|[\p{L}][\p{L} ]{0,20}:\s)")]
    private static partial Regex Begins();

    [GeneratedRegex(@"(?:,|\p{L}-|\s(?:and|of|a|an|the|with|into|over|for|to|in|or|on))$", RegexOptions.IgnoreCase)]
    private static partial Regex Hangs();

    [GeneratedRegex(@"\p{Ll}-$")]
    private static partial Regex Hyphen();
}

using System.Text;
using Washline.Fitting;

namespace Washline.App.Sheets;

/// <summary>Other ways to pour, what would bring the drink nearer, and whether the answer stands, as text.</summary>
internal static class WaysSheet
{
    public static void Append(StringBuilder text, Fit fit, Ways ways)
    {
        if (fit.Closest is not { } closest) return;
        if (ways.Alternatives.Count > 0)
        {
            text.AppendLine("  other bottles:");
            foreach (var way in ways.Alternatives)
            {
                text.Append("    ").AppendLine($"{Ways.Others(way, closest)}: {FitSheet.Sentence(way, Say.From(fit))}");
                text.Append("      ").AppendLine(string.Join(", ", way.Lines.Select(l => l.Words)));
            }
        }

        if (ways.Closings.Count > 0)
        {
            text.AppendLine("  nearer:");
            foreach (var closing in ways.Closings) text.Append("    ").AppendLine(Ways.Nearer(closing));
        }

        if (ways.Standing is { } standing) text.Append("  ").AppendLine(Ways.Stands(standing, closest, fit.Straight!));
        if (!fit.IsProven) text.Append("  ").AppendLine(Ways.NotProven);
        if (ways.Alternatives.Count + ways.Closings.Count > 0 || ways.Standing is not null || !fit.IsProven) text.AppendLine();
    }
}

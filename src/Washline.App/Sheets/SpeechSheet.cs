using System.Globalization;
using System.Text;
using Washline.Reading;

namespace Washline.App.Sheets;

/// <summary>Where in a talk every line of its drinks was heard, as text: the time, how sure the reading is, the words, and what was mended.</summary>
public static class SpeechSheet
{
    /// <summary>The sheet; empty for a text that is not spoken.</summary>
    public static string Of(Draft draft)
    {
        if (draft.Form is not (TextForm.Spoken or TextForm.Captions)) return "";
        var text = new StringBuilder();
        foreach (var (spec, origins) in draft.Specs.Zip(draft.Origins))
        {
            text.AppendLine($"Heard in {spec.Title}").AppendLine();
            var rows = new Columns(0, 1);
            foreach (var (line, origin) in spec.Lines.Zip(origins))
            {
                var mended = string.Join(", ", origin.Mended.Select(m => $"“{m.Heard}” taken for {m.As}"));
                rows.Row(At(origin), Sure(origin), line.Ingredient, $"“{origin.Words}”", mended);
            }

            text.AppendLine(rows.Text());
        }

        return text.ToString();
    }

    private static string At(Origin origin) => origin.Seconds is { } seconds ? Say.Moment(seconds) : string.Create(CultureInfo.InvariantCulture, $"{origin.Line}:{origin.Column}");

    private static string Sure(Origin origin) => string.Create(CultureInfo.InvariantCulture, $"{origin.Confidence * 100:0} % sure");
}

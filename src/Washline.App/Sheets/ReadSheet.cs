using System.Text;
using Washline.Drinks;
using Washline.Reading;

namespace Washline.App.Sheets;

/// <summary>What a text was read as, as text: each spec with its lines, and what they mean.</summary>
public static class ReadSheet
{
    /// <summary>The sheet.</summary>
    public static string Of(Draft draft)
    {
        var text = new StringBuilder();
        for (var s = 0; s < draft.Specs.Count; s++)
        {
            var spec = draft.Specs[s];
            var origins = s < draft.Origins.Count ? draft.Origins[s] : [];
            text.AppendLine(spec.Title);
            if (spec.Credit != Credit.Unknown) text.AppendLine(Say.Credit(spec.Credit));
            text.AppendLine();
            var lines = new Columns(1);
            for (var i = 0; i < spec.Lines.Count; i++)
            {
                var (line, remark) = (spec.Lines[i], i < origins.Count ? origins[i].Remark : "");
                lines.Row($"{line.Amount.Written} {line.Ingredient}".Trim(), Means(line, spec.PartMl), remark.Length > 0 ? $"{Kind(line)}; {remark}" : Kind(line));
            }

            if (spec.Lines.Count > 0) text.Append(lines.Text()).AppendLine();
            var how = new Columns();
            how.Row("method", $"{spec.Method.Technique.ToString().ToLowerInvariant()}{Said(spec.Method.Written)}");
            how.Row("ice", $"{Ice(spec.Ice)}{Said(spec.IceWritten)}");
            how.Row("glass", spec.Glass.Length > 0 ? spec.Glass : "not said");
            foreach (var garnish in spec.Garnish) how.Row("garnish", garnish);
            foreach (var recipe in spec.OwnRecipes) how.Row("made", $"{recipe.Name}: {recipe.Written}");
            foreach (var note in spec.Notes) how.Row("note", note);
            text.AppendLine(how.Text());
        }

        return draft.Specs.Count == 0 ? "No spec was found in it." + Environment.NewLine : text.ToString();
    }

    private static string Means(Line line, double partMl) => line.Amount.Unit.Kind == UnitKind.TopUp ? "what the glass still holds"
        : line.Amount.Unit.Kind == UnitKind.Unsaid ? "no amount"
        : line.Amount.Millilitres(line.Kind, partMl) is { } ml ? Say.Poured(ml.Typical) : "?";

    private static string Kind(Line line)
    {
        var kind = line.Kind is { } k ? k.Name : "not in the catalogue";
        var strength = line.Strength is { } s ? $", {s}" : "";
        var note = line.Note.Length > 0 ? $", {line.Note}" : "";
        return $"{kind}{strength}{note}{(line.Optional ? ", optional" : "")}";
    }

    private static string Ice(ServedIce ice) => ice switch
    {
        ServedIce.Cubes => "cubes",
        ServedIce.LargeCube => "one large cube",
        ServedIce.Crushed => "crushed",
        _ => "none in the glass",
    };

    private static string Said(string written) => written.Length > 0 ? $"  “{written}”" : "  (not said)";
}

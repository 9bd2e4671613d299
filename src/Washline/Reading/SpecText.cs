using System.Text;
using Washline.Drinks;
using Washline.Mixtures;

namespace Washline.Reading;

/// <summary>A spec as text that <see cref="Draft.Read"/> reads back.</summary>
public static class SpecText
{
    /// <summary>The spec as text: title, ingredients, then what is known of method, ice, glass, garnish, credit and notes.</summary>
    /// <remarks>The maker's own words stand wherever the spec kept them. Lines end in a line feed.</remarks>
    public static string Write(Spec spec)
    {
        var text = new StringBuilder();
        var title = One(spec.Title);
        if (title.Length > 0) text.Append(TitleText.ReadsPlain(title) ? title : "title: " + title).Append("\n\n");
        foreach (var line in spec.Lines) text.Append(LineText.Write(line)).Append('\n');

        var keys = new StringBuilder();
        void Key(string name, string value) => keys.Append(name).Append(": ").Append(name is "note" or "made" ? value : Reader.Unkeyed(value)).Append('\n');
        var method = MethodWords(spec);
        if (method.Length > 0) Key("method", method);
        var glass = One(spec.Glass);
        if (glass.Length > 0 || GlassText.In(method).Length > 0) Key("glass", glass.Length > 0 ? glass : "-");
        var ice = IceWords(spec, method);
        if (ice.Length > 0) Key("ice", ice);
        if (spec.Garnish.Count > 0 || GarnishText.In(method).Count > 0) Key("garnish", spec.Garnish.Count > 0 ? string.Join("; ", spec.Garnish.Select(One)) : "-");
        if (One(spec.Credit.Maker) is { Length: > 0 } maker) Key("maker", maker);
        if (One(spec.Credit.Where) is { Length: > 0 } where) Key("where", where);
        if (One(spec.Credit.Known) is { Length: > 0 } known) Key("known", known);
        if (spec.Credit != Credit.Unknown) Key("pass on", spec.Credit.PassOn.ToString().ToLowerInvariant());
        foreach (var recipe in spec.OwnRecipes) Key("made", $"{One(recipe.Name)}: {One(recipe.Written)}");
        foreach (var note in spec.Notes.Select(One).Where(n => n.Length > 0)) Key("note", note);
        if (spec.PartMl != Amount.UsualPartMl) Key("part", Text.Number(spec.PartMl) + " ml");
        if (keys.Length > 0 && spec.Lines.Count > 0) text.Append('\n');
        return text.Append(keys).ToString();
    }

    /// <summary>One ingredient as a line of that text.</summary>
    public static string Write(Line line) => LineText.Write(line);

    private static string MethodWords(Spec spec)
    {
        var written = One(spec.Method.Written);
        var read = MethodText.Of(written, spec.Lines);
        if ((read.Technique, read.Seconds) == (spec.Method.Technique, spec.Method.Seconds)) return written;
        var technique = spec.Method.Technique == Technique.NoIce ? "no ice" : spec.Method.Technique.ToString().ToLowerInvariant();
        var told = spec.Method.Seconds is { } seconds ? $"{technique} {Text.Number(seconds)} s" : technique;
        var both = $"{told}: {written}";
        var again = MethodText.Of(both, spec.Lines);
        return written.Length > 0 && (again.Technique, again.Seconds) == (spec.Method.Technique, spec.Method.Seconds) ? both : told;
    }

    private static string IceWords(Spec spec, string method)
    {
        var written = One(spec.IceWritten);
        var inMethod = IceText.In(method);
        var read = (written.Length > 0 ? IceText.Of(written) : null) ?? IceText.Usual(spec.Glass, spec.Method.Technique);
        if (read != spec.Ice) return spec.Ice switch { ServedIce.None => "none", ServedIce.LargeCube => "large cube", var ice => ice.ToString().ToLowerInvariant() };
        return written.Length > 0 || inMethod.Length == 0 ? written : "-";
    }

    // A value is one line.
    private static string One(string words) => string.Join(' ', SourceLine.Plain(words).Split(' ', StringSplitOptions.RemoveEmptyEntries));
}

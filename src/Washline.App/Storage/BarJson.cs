using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Washline.Drinks;
using Washline.Reading;

namespace Washline.App.Storage;

/// <summary>The whole bar as JSON, with the unit in each name. A spec is its text; the fields beside it are for programs and are not read back.</summary>
internal static class BarJson
{
    private static readonly JsonWriterOptions Readable = new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The bar, or only some of its lists.</summary>
    public static string Write(Bar bar, params string[] lists)
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes, Readable))
        {
            var all = Things.Of(bar).ToLookup(Things.What);
            json.WriteStartObject();
            foreach (var (list, what) in Columns.JsonLists.Where(l => lists.Length == 0 ? l.Key != "words" || all["words"].Any() : lists.Contains(l.Key)))
            {
                json.WritePropertyName(list);
                if (what != "settings") json.WriteStartArray();
                foreach (var thing in all[what]) Write(json, thing);
                if (what != "settings") json.WriteEndArray();
            }

            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(bytes.ToArray()) + "\n";
    }

    /// <summary>One thing.</summary>
    public static string Write(object thing)
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes, Readable)) Write(json, thing);
        return Encoding.UTF8.GetString(bytes.ToArray()) + "\n";
    }

    public static Arrivals Read(string text)
    {
        var bytes = Encoding.UTF8.GetBytes(text.TrimStart('\uFEFF'));
        try
        {
            return JsonEntries.Read(bytes);
        }
        catch (JsonException e)
        {
            var line = (int)(e.LineNumber ?? 0) + 1;
            return new Arrivals([], [new Problem(line, (int)(e.BytePositionInLine ?? 0) + 1, "The JSON breaks off or is not JSON here.", "Check brackets, quotes and commas just before.")]);
        }
    }

    private static void Write(Utf8JsonWriter json, object thing)
    {
        var entry = Things.Entry(thing);
        json.WriteStartObject();
        foreach (var column in Columns.ByWhat[entry.What].Where(c => entry[c].Length > 0))
        {
            json.WritePropertyName(Columns.Json(entry.What, column));
            if (Columns.IsNumber(column) || column == "lines") json.WriteRawValue(entry[column]);
            else json.WriteStringValue(entry[column]);
        }

        if (thing is Spec spec) SpecFields(json, spec);
        json.WriteEndObject();
    }

    private static void SpecFields(Utf8JsonWriter json, Spec spec)
    {
        json.WriteString("maker", spec.Credit.Maker);
        json.WriteString("where", spec.Credit.Where);
        json.WriteString("known", spec.Credit.Known);
        json.WriteString("passOn", spec.Credit.PassOn.ToString().ToLowerInvariant());
        json.WriteString("technique", spec.Method.Technique.ToString().ToLowerInvariant());
        if (spec.Method.Seconds is { } seconds) json.WriteNumber("seconds", seconds);
        json.WriteString("ice", JsonNamingPolicy.CamelCase.ConvertName(spec.Ice.ToString()));
        json.WriteString("glass", spec.Glass);
        json.WriteStartArray("lines");
        foreach (var line in spec.Lines)
        {
            json.WriteStartObject();
            json.WriteString("written", line.Amount.Written);
            json.WriteString("ingredient", line.Ingredient);
            if (line.Kind is not null) json.WriteString("kind", line.Kind.Id);
            if (line.Amount.Millilitres(line.Kind, spec.PartMl) is { } ml) json.WriteNumber("volumeMl", Math.Round(ml.Typical, 3));
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}

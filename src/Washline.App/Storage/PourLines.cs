using System.Text.Encodings.Web;
using System.Text.Json;
using Washline.Drinks;

namespace Washline.App.Storage;

/// <summary>The lines of a household's pour as JSON: <c>[{"bottle": "The rye", "ml": 60}]</c>.</summary>
internal static class PourLines
{
    private static readonly JsonSerializerOptions Plain = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public static string Write(IReadOnlyList<HousePourLine> lines) =>
        JsonSerializer.Serialize(lines.Select(l => new { bottle = l.Bottle, ml = l.Millilitres }), Plain);

    public static IReadOnlyList<HousePourLine> Read(Entry entry)
    {
        try
        {
            using var json = JsonDocument.Parse(entry["lines"]);
            return json.RootElement.EnumerateArray()
                .Select(l => new HousePourLine(l.GetProperty("bottle").GetString() ?? "", l.GetProperty("ml").GetDouble())).ToList();
        }
        catch (Exception e) when (e is JsonException or KeyNotFoundException or InvalidOperationException or FormatException)
        {
            entry.Bad("lines", "The lines of the pour could not be read.", """Write them as [{"bottle": "The rye", "ml": 60}].""");
            return [];
        }
    }
}

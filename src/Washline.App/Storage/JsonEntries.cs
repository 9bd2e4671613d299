using System.Text;
using System.Text.Json;
using Washline.Reading;

namespace Washline.App.Storage;

/// <summary>Reads the JSON form of a bar as entries that know their line and column.</summary>
internal static class JsonEntries
{
    /// <exception cref="JsonException">It is not JSON.</exception>
    public static Arrivals Read(byte[] bytes)
    {
        var entries = new List<Entry>();
        var problems = new List<Problem>();
        var reader = new Utf8JsonReader(bytes);
        reader.Read();
        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            var list = reader.GetString()!;
            if (!Columns.JsonLists.TryGetValue(list, out var what))
            {
                problems.Add(Problem(bytes, reader, $"There is no list '{list}' in a bar.", $"The lists are: {string.Join(", ", Columns.JsonLists.Keys)}."));
                reader.Skip();
                continue;
            }

            reader.Read();
            if (reader.TokenType == JsonTokenType.StartObject) entries.Add(Thing(bytes, ref reader, what, problems));
            else if (reader.TokenType != JsonTokenType.StartArray) problems.Add(Problem(bytes, reader, $"'{list}' is not a list.", "Write [ … ] around what it holds."));
            else while (reader.Read() && reader.TokenType != JsonTokenType.EndArray) Item(bytes, ref reader, what, entries, problems);
        }

        while (reader.Read()) { }
        return new Arrivals(entries, problems);
    }

    private static void Item(byte[] bytes, ref Utf8JsonReader reader, string what, List<Entry> entries, List<Problem> problems)
    {
        if (reader.TokenType == JsonTokenType.StartObject)
        {
            entries.Add(Thing(bytes, ref reader, what, problems));
            return;
        }

        problems.Add(Problem(bytes, reader, $"This is not a {what}.", "Write { … } with its fields."));
        reader.Skip();
    }

    private static Entry Thing(byte[] bytes, ref Utf8JsonReader reader, string what, List<Problem> problems)
    {
        var at = Place(bytes, reader.TokenStartIndex, "");
        var columns = Columns.ByWhat.Values.SelectMany(c => c).Distinct().ToDictionary(c => Columns.Json(what, c));
        var cells = new Dictionary<string, Cell>();
        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            var name = reader.GetString()!;
            var known = columns.TryGetValue(name, out var column) && !(what == "spec" && !Columns.ByWhat[what].Contains(column));
            if (!known && what != "spec") problems.Add(Problem(bytes, reader, $"A {what} has no field '{name}'.", $"Its fields are: {string.Join(", ", Columns.ByWhat[what].Select(c => Columns.Json(what, c)))}."));
            reader.Read();
            var from = reader.TokenStartIndex;
            var text = reader.TokenType == JsonTokenType.String ? reader.GetString()! : null;
            reader.Skip();
            text ??= Encoding.UTF8.GetString(bytes.AsSpan((int)from, (int)(reader.BytesConsumed - from)));
            if (known) cells[column!] = Place(bytes, from, text == "null" ? "" : text);
        }

        return new Entry(what, at, cells);
    }

    private static Problem Problem(byte[] bytes, Utf8JsonReader reader, string what, string todo)
    {
        var at = Place(bytes, reader.TokenStartIndex, "");
        return new Problem(at.Line, at.Column, what, todo);
    }

    private static Cell Place(byte[] bytes, long offset, string text)
    {
        var before = bytes.AsSpan(0, (int)offset);
        var line = before.Count((byte)'\n') + 1;
        var start = before.LastIndexOf((byte)'\n') + 1;
        return new Cell(text, line, Encoding.UTF8.GetCharCount(before[start..]) + 1);
    }
}

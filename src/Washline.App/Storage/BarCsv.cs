using System.Text;
using CsvHelper;
using Washline.Drinks;
using Washline.Reading;

namespace Washline.App.Storage;

/// <summary>The whole bar as one CSV file: a row for each thing, under the columns of <see cref="Columns.All"/>.</summary>
internal static class BarCsv
{
    public static string Write(Bar bar)
    {
        using var text = new StringWriter { NewLine = "\n" };
        using (var csv = CsvWriter.Create(text, new CsvWriterOptions { NewLine = "\n" }, leaveOpen: true))
        {
            csv.WriteRecord([.. Columns.All]);
            foreach (var entry in Things.Of(bar).Select(Things.Entry))
                csv.WriteRecord([.. Columns.All.Select(column => column == "what" ? entry.What : entry[column])]);
        }

        return text.ToString();
    }

    public static Arrivals Read(string text)
    {
        text = text.TrimStart('\uFEFF');
        var separator = Separator(text);
        using var csv = CsvReader.Create(new StringReader(text), new CsvReaderOptions
        {
            CommentPrefix = '#',
            Separator = separator,
            TrackLineNumbers = true,
            DetectSeparatorHint = false,
        }, false);
        var heads = csv.Headers.Select(h => h.Trim().ToLowerInvariant()).ToArray();
        var problems = new List<Problem>();
        if (!heads.Contains("what")) problems.Add(new Problem(1, 1, "The first row has no column 'what'.", $"Begin with the row: {string.Join(',', Columns.All)}."));
        foreach (var head in heads.Where(h => !Columns.All.Contains(h)))
            problems.Add(new Problem(1, 1, $"There is no column '{head}'.", $"The columns are: {string.Join(", ", Columns.All)}."));
        if (problems.Count > 0) return new Arrivals([], problems);

        var entries = new List<Entry>();
        while (csv.Read())
        {
            var line = csv.LineNumber;
            var places = Places(Encoding.UTF8.GetString(csv.RawRecord), separator);
            if (csv.FieldCount > heads.Length)
                problems.Add(new Problem((int)line, 1, $"The row has {csv.FieldCount} cells; the first row has {heads.Length}.", "Put quotes around a cell that holds a comma."));
            var cells = new Dictionary<string, Cell>();
            for (var i = 0; i < Math.Min(heads.Length, csv.FieldCount); i++)
            {
                var place = places[Math.Min(i, places.Count - 1)];
                cells[heads[i]] = new Cell(csv.GetString(i), (int)line + place.Line, place.Column);
            }

            entries.Add(new Entry(cells["what"].Text.Trim().ToLowerInvariant(), new Cell("", (int)line, 1), cells));
        }

        return new Arrivals(entries, problems);
    }

    // Spreadsheets in half the world write semicolons.
    private static char Separator(string text)
    {
        var head = text.Split('\n').FirstOrDefault(l => l.Trim().Length > 0 && l[0] != '#') ?? "";
        return ",;\t".MaxBy(c => head.Count(h => h == c));
    }

    // Where each cell of a record begins: lines below its first, and column from 1.
    private static List<(int Line, int Column)> Places(string record, char separator)
    {
        var places = new List<(int, int)> { (0, 1) };
        int line = 0, start = 0;
        var quoted = false;
        for (var i = 0; i < record.Length; i++)
        {
            if (record[i] == '"') quoted = !quoted;
            else if (record[i] == '\n') (line, start) = (line + 1, i + 1);
            else if (record[i] == separator && !quoted) places.Add((line, i - start + 2));
        }

        return places;
    }
}

using System.Globalization;
using CsvHelper;
using Washline.Measures;
using Washline.Mixtures;

namespace Washline.Drinks;

/// <summary>The text of data/kinds.csv as kinds. Its head says what each column means.</summary>
internal static class KindsTable
{
    private static readonly CsvReaderOptions Form = new() { CommentPrefix = '#' };

    public static IReadOnlyList<Kind> Read(TextReader text)
    {
        using var csv = CsvReader.Create(text, Form);
        var rows = new Dictionary<string, Row>();
        while (csv.Read())
        {
            var row = new Row(csv.Headers.Select((name, i) => (name, Cell: csv.GetString(i))).ToDictionary(c => c.name, c => c.Cell));
            rows.Add(row["id"], row);
        }

        var kinds = new Dictionary<string, Kind>();
        Kind Make(string id)
        {
            if (kinds.TryGetValue(id, out var made)) return made;
            var row = rows[id];
            var kind = Of(row, row["parent"] is "" ? null : Make(row["parent"]));
            return kinds[id] = kind;
        }

        return rows.Keys.Select(Make).ToList();
    }

    private static Kind Of(Row row, Kind? parent)
    {
        var kind = new Kind
        {
            Id = row["id"],
            Name = row["name"],
            Parent = parent,
            Synonyms = row.List("synonyms", '|'),
            Strength = row.Figure("abv"),
            Sugar = row.Figure("sugar_g_l", "sugar"),
            Acid = row.Figure("acid_g_l", "acid"),
            GlucoseShare = row.Number("glucose_share") ?? 0,
            FructoseShare = row.Number("fructose_share") ?? 0,
            Allergens = row.List("allergens", ';'),
            Keeping = row["keeping"],
            Tags = row.List("tags", ';'),
            Piece = row.Number("piece_ml") is { } one
                ? new Piece(row.List("piece", '|'), new Band(row.Number("piece_low") ?? one, one, row.Number("piece_high") ?? one), row["piece_source"])
                : null,
            Potency = row.Number("potency") ?? 1,
            Spread = row.Number("spread"),
            Note = row["note"],
        };
        return row.Number("density_kg_m3") is { } density && !kind.Is("solid") ? Closing(kind, density, row.Number("water_g_100g"), row.Number("fat_g_100g")) : kind;
    }

    // The rest of a litre, once water, alcohol, sugar and acid are known, is fat, protein, pulp and salt: their mass from the
    // water column, or, without it, from how much denser the liquid is than its sugar makes it.
    private static Kind Closing(Kind kind, double density, double? waterPer100, double? fatPer100)
    {
        const double pulpMlPerG = 0.75, fatMlPerG = 1.08; // memory
        var sugar = kind.Sugar.Band.Typical;
        var acid = kind.Acid.Band.Typical;
        var ethanol = kind.Strength.Band.Typical / 100 * EthanolWater.EthanolDensity;
        var fat = (fatPer100 ?? 0) * density / 100;
        double other;
        if (waterPer100 is { } water)
        {
            other = density * (1 - water / 100) - sugar - acid - ethanol;
        }
        else
        {
            var plain = kind.With(null, null, null)?.Litre.Mass ?? density;
            other = (density - plain) / (1 - pulpMlPerG * 0.9982);
        }

        other = Math.Clamp(other, 0, 400);
        if (other < 1) return kind;
        var mlPerG = (Math.Min(fat, other) * fatMlPerG + Math.Max(0, other - fat) * pulpMlPerG) / other;
        return kind with { OtherG = other, OtherMlPerG = mlPerG };
    }

    private sealed class Row(Dictionary<string, string> cells)
    {
        public string this[string name] => cells[name].Trim();

        public double? Number(string name) =>
            this[name] is { Length: > 0 } cell ? double.Parse(cell, CultureInfo.InvariantCulture) : null;

        public string[] List(string name, char between) =>
            this[name].Split(between, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);

        public Figure Figure(string name, string? prefix = null)
        {
            prefix ??= name;
            return Number(name) is { } typical
                ? new Figure(new Band(Number(prefix + "_low") ?? typical, typical, Number(prefix + "_high") ?? typical), this[prefix + "_source"])
                : Drinks.Figure.None;
        }
    }
}

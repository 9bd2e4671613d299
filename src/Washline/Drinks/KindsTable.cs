using System.Globalization;
using CsvHelper;
using Washline.Measures;
using Washline.Mixtures;

namespace Washline.Drinks;

/// <summary>The text of data/kinds.csv as kinds, with data/acid-and-salt.csv. Its head says what each column means.</summary>
internal static class KindsTable
{
    private static readonly CsvReaderOptions Form = new() { CommentPrefix = '#' };

    /// <summary>Reads the catalogue and what data/acid-and-salt.csv says of its kinds.</summary>
    public static IReadOnlyList<Kind> Read(TextReader text, TextReader acidAndSalt)
    {
        var rows = Rows(text, "id");
        var sour = Rows(acidAndSalt, "kind");

        var kinds = new Dictionary<string, Kind>();
        Kind Make(string id)
        {
            if (kinds.TryGetValue(id, out var made)) return made;
            var row = rows[id];
            var kind = Of(row, row["parent"] is "" ? null : Make(row["parent"]), sour.GetValueOrDefault(id));
            return kinds[id] = kind;
        }

        return rows.Keys.Select(Make).ToList();
    }

    private static Dictionary<string, Row> Rows(TextReader text, string key)
    {
        using var csv = CsvReader.Create(text, Form);
        var rows = new Dictionary<string, Row>();
        while (csv.Read())
        {
            var row = new Row(csv.Headers.Select((name, i) => (name, Cell: csv.GetString(i))).ToDictionary(c => c.name, c => c.Cell));
            rows.Add(row[key], row);
        }

        return rows;
    }

    private static Kind Of(Row row, Kind? parent, Row? sour)
    {
        var acid = row.Figure("acid_g_l", "acid");
        var pH = sour is null ? parent?.PH : sour.Number("ph");
        var kind = new Kind
        {
            Id = row["id"],
            Name = row["name"],
            Parent = parent,
            Synonyms = row.List("synonyms", '|'),
            Strength = row.Figure("abv"),
            Sugar = row.Figure("sugar_g_l", "sugar"),
            Acid = acid,
            PH = pH,
            AcidPerGram = PerGram(sour?.Acids() ?? parent?.AcidPerGram ?? Acids.OfCitric(1), acid.Band.Typical, pH),
            AcidSplitSource = sour?["source"] ?? (parent is { AcidSplitSource.Length: > 0 } ? parent.AcidSplitSource : ""),
            Solids = new Solids(sour?.Number("salt_g_l") ?? 0, 0, 0, 0),
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
        if (row.Number("sucrose_share") is { } sucrose) kind = Faint(kind, 1 - sucrose - kind.GlucoseShare - kind.FructoseShare);
        return row.Number("density_kg_m3") is { } density && !kind.Is("solid") ? Closing(kind, density, row.Number("water_g_100g"), row.Number("fat_g_100g")) : kind;
    }

    // What sucrose, glucose and fructose leave is lactose in milk and maltose in what is made of grain. Elsewhere it is how far apart the printed total and
    // the printed sugars stand, and goes on counting as sucrose; so does the twelfth of honey that is other sugars, for with it honey is as sweet as published.
    private static Kind Faint(Kind kind, double share) =>
        share < 0.005 ? kind
        : kind.IsA("dairy") ? kind with { LactoseShare = share }
        : kind.IsA("beer") || kind.IsA("plant-milk") || kind.IsA("corn-syrup") ? kind with { MaltoseShare = share }
        : kind;

    // The rest of a litre, once water, alcohol, sugar and acid are known, is fat, protein, pulp and salt: their mass from the
    // water column, or, without it, from how much denser the liquid is than its sugar makes it.
    private static Kind Closing(Kind kind, double density, double? waterPer100, double? fatPer100)
    {
        var (strength, sugar, salt) = (kind.Strength.Band.Typical, kind.Sugar.Band.Typical, kind.Solids.Salt);
        var acid = kind.AcidPerGram.Grams * kind.Acid.Band.Typical;
        var ethanol = strength / 100 * EthanolWater.EthanolDensity;
        double rest;
        if (waterPer100 is { } water)
        {
            rest = density * (1 - water / 100) - sugar - acid - ethanol - salt;
        }
        else
        {
            var plain = kind.With(null, null, null)?.Litre.Mass ?? density;
            rest = (density - plain) / (1 - Solids.PulpMlPerG * 0.9982);
        }

        rest = Math.Clamp(rest, 0, 400);
        if (rest < 1) return kind;
        var fat = Math.Min(rest, (fatPer100 ?? 0) * density / 100);
        return kind with { Solids = Solids.OfPulp(rest - fat) with { Salt = salt, Fat = fat } };
    }

    // The alkali is what brings the kind's typical litre to its pH; it goes up and down with the acid.
    private static Acids PerGram(Acids split, double gPerL, double? pH)
    {
        var bare = split with { AlkaliMmol = 0 };
        return pH is { } target && gPerL > 0 ? bare with { AlkaliMmol = Acidity.AlkaliMmol(bare * gPerL, target) / gPerL } : bare;
    }

    private sealed class Row(Dictionary<string, string> cells)
    {
        public string this[string name] => cells[name].Trim();

        public double? Number(string name) =>
            this[name] is { Length: > 0 } cell ? double.Parse(cell, CultureInfo.InvariantCulture) : null;

        public Acids Acids()
        {
            double Share(string name) => Number(name) ?? 0;
            return Mixtures.Acids.Split(Share("citric"), Share("malic"), Share("tartaric"), Share("acetic"), Share("lactic"), Share("phosphoric"));
        }

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

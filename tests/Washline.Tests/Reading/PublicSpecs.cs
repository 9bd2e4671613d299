using System.Globalization;
using Washline.Drinks;
using Washline.Reading;
using Washline.Tests.Published;

namespace Washline.Tests.Reading;

/// <summary>The public classics of data/published/iba-specs.csv, written out as people write them, read back line by line.</summary>
public class PublicSpecs
{
    private static readonly ILookup<string, PublishedRow> Drinks = PublishedTable.Read("iba-specs.csv").Rows.ToLookup(r => r["drink"]);

    public static TheoryData<string> Titles() => [.. Drinks.Select(d => d.Key)];

    [Fact]
    public void There_are_seventy_six() => Assert.Equal(76, Drinks.Count);

    [Theory]
    [MemberData(nameof(Titles))]
    public void Written_in_millilitres_every_line_is_read_right(string title) => Check(title, "ml", row => $"{Amount(row, 1, "ml", '.')} {row["ingredient"]}{(row["note"] == "fresh" ? ", fresh" : "")}".Trim());

    [Theory]
    [MemberData(nameof(Titles))]
    public void Written_in_centilitres_with_decimal_commas_every_line_is_read_right(string title) => Check(title, "cl", row => $"- {Amount(row, 10, "cl", ',')} {Capital(row["ingredient"])}".Trim());

    [Theory]
    [MemberData(nameof(Titles))]
    public void Written_as_a_table_every_line_is_read_right(string title) => Check(title, "ml", row => $"| {Amount(row, 1, "ml", '.')} | {row["ingredient"]} |", "| Amount | Ingredient |\n|---|---|\n");

    private static void Check(string title, string unit, Func<PublishedRow, string> written, string head = "")
    {
        var rows = Drinks[title].ToList();
        var text = $"title: {title}\n\n{head}{string.Join('\n', rows.Select(written))}\n\nmethod: {rows[0]["technique"]}\nglass: {rows[0]["glass"]}\n";
        var spec = Assert.Single(Draft.TakeIn(text, Kinds.Catalogue).Specs);
        Assert.Equal(title, spec.Title);
        Assert.Equal(rows.Select(r => Expected(r, unit)), spec.Lines.Select(l => string.Create(CultureInfo.InvariantCulture, $"{l.Amount.Low:0.####}–{l.Amount.High:0.####} {l.Amount.Unit.Name} {l.Kind?.Id}")));
    }

    private static string Expected(PublishedRow row, string unit)
    {
        var ends = row["amount"].Split('-', StringSplitOptions.RemoveEmptyEntries).Select(n => double.Parse(n, CultureInfo.InvariantCulture)).ToArray();
        var per = row["unit"] == "mL" && unit == "cl" ? 10 : 1;
        var (low, high) = ends.Length == 0 ? (2, 4) : (ends[0] / per, ends[^1] / per); // the list says few: two to four
        var name = row["unit"] switch { "mL" => unit, "teaspoon" => "tsp", "tablespoon" => "tbsp", "drops" => "drop", var other => other };
        return string.Create(CultureInfo.InvariantCulture, $"{low:0.####}–{high:0.####} {name} {Kinds.Catalogue.Find(row["ingredient"]).Kind!.Id}");
    }

    private static string Amount(PublishedRow row, double per, string unit, char point)
    {
        var plural = row["amount"] is "" or not "1";
        var word = row["unit"] switch { "mL" => unit, "dash" => plural ? "dashes" : "dash", "drops" => "drops", "piece" => "", var other => plural && other != "top up" ? other + "s" : other };
        if (row["unit"] == "top up") return word;
        if (row["amount"].Length == 0) return "a few " + word;
        var number = row["unit"] == "mL" ? (double.Parse(row["amount"], CultureInfo.InvariantCulture) / per).ToString("0.####", CultureInfo.InvariantCulture).Replace('.', point) : row["amount"];
        return $"{number} {word}".Trim();
    }

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}

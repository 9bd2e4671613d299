using Washline.Drinks;
using Washline.Measures;
using Washline.Mixtures;

namespace Washline.Tests.Published;

public class TradeTables
{
    [Fact]
    public void Acids_count_as_citric_by_what_they_neutralise() => CitricEquivalents().Hold();

    [Fact]
    public void Malic_acid_in_the_catalogue_counts_as_the_table_says()
    {
        var malic = PublishedTable.Read("acids.csv").Rows.Single(r => r["acid"] == "malic").Number("citric_eq_g_per_g");
        var kind = Kinds.Catalogue["malic-solution"];
        Assert.Equal(60 * 1.021 * malic, kind.Acid.Band.Typical, 0.05); // 60 g in a kilogram, 1.021 kg in a litre
        Assert.Equal(900 * malic, Kinds.Catalogue["malic-acid"].Acid.Band.Typical, 1.0); // 900 g in a level litre
    }

    [Fact]
    public void The_fluid_ounce_is_the_printed_one() => Ounce().Hold();

    [Theory]
    [InlineData("juice of one lime", "lime-juice")]
    [InlineData("juice of one lemon", "lemon-juice")]
    [InlineData("egg white", "egg-white")]
    public void A_piece_of_fruit_or_egg_gives_what_the_table_says(string item, string id)
    {
        var row = PublishedTable.Read("measures.csv").Rows.Single(r => r["item"] == item);
        Assert.Equal(row.Number("typical"), Kinds.Catalogue[id].Piece!.Millilitres.Typical);
    }

    [Fact]
    public void A_British_unit_is_ten_millilitres_of_ethanol_rounded_up()
    {
        var unit = PublishedTable.Read("standard-drinks.csv").Rows.Single(r => r["country"] == "uk");
        Assert.Equal(unit.Number("ethanol_g"), Math.Round(10 * EthanolWater.EthanolDensity / 1000));
    }

    [Fact]
    public void The_usual_country_has_a_standard_drink_and_no_country_has_two()
    {
        var rows = PublishedTable.Read("standard-drinks.csv").Rows;
        Assert.Contains(rows, r => r["country"] == Settings.Usual.Country);
        Assert.Equal(rows.Count, rows.Select(r => r["country"]).Distinct().Count());
        Assert.All(rows, r => Assert.InRange(r.Number("ethanol_g"), 8, 20));
        Assert.All(rows, r => Assert.True(r.Has("publisher") && r.Has("source")));
    }

    [Fact]
    public void Every_ingredient_of_the_public_classics_is_a_kind()
    {
        var unknown = PublishedTable.Read("iba-specs.csv").Rows.Select(r => r["ingredient"]).Where(i => i.Length > 0).Distinct()
            .Where(i => Kinds.Catalogue.Find(i).Kind is null).ToList();
        Assert.True(unknown.Count == 0, "Not in the catalogue: " + string.Join(", ", unknown));
    }

    [Theory]
    [InlineData("sugar syrup", "simple-syrup")]
    [InlineData("sweet red vermouth", "sweet-vermouth")]
    [InlineData("red bitter aperitivo liqueur", "red-bitter-aperitif")]
    [InlineData("cocoa liqueur", "creme-de-cacao")]
    [InlineData("lemon-flavoured vodka", "flavoured-vodka")]
    [InlineData("bourbon or rye whiskey", "american-whisky")]
    [InlineData("white mint liqueur", "creme-de-menthe")]
    [InlineData("blackcurrant liqueur", "creme-de-cassis")]
    [InlineData("hot pepper sauce", "hot-sauce")]
    [InlineData("sugar cane juice", "cane-juice")]
    [InlineData("Islay single malt whisky", "peated-scotch")]
    public void The_classics_name_the_kind_that_is_meant(string words, string id)
    {
        Assert.Contains(PublishedTable.Read("iba-specs.csv").Rows, r => r["ingredient"] == words);
        Assert.Equal(id, Kinds.Catalogue.Find(words).Kind?.Id);
    }

    public static Residuals CitricEquivalents()
    {
        var table = PublishedTable.Read("acids.csv");
        var citric = table.Rows.Single(r => r["acid"] == "citric");
        var perProton = citric.Number("molar_mass_g_mol") / citric.Number("protons");
        var residuals = new Residuals(table.Name, "grams of citric acid that a gram of acid stands for", "g/g", "computed again");
        foreach (var row in table.Rows)
        {
            residuals.Add(row["acid"], perProton / (row.Number("molar_mass_g_mol") / row.Number("protons")), row.Number("citric_eq_g_per_g"), table.Tolerance);
        }

        return residuals;
    }

    public static Residuals Ounce()
    {
        var table = PublishedTable.Read("measures.csv");
        var residuals = new Residuals(table.Name, "US fluid ounce and its printed parts", "mL");
        foreach (var row in table.Rows.Where(r => r["quantity"] == "volume"))
        {
            double? ounces = row["item"] switch { "US fluid ounce" => 1, "teaspoon" => 1.0 / 6, "tablespoon" => 0.5, _ => null };
            if (ounces is not { } oz) residuals.Leave("no fixed size");
            else residuals.Add(row["item"], Volume.FromFluidOunces(oz).Millilitres, row.Number("typical"), row["item"] == "US fluid ounce" ? 0.00005 : 0.005);
        }

        return residuals;
    }
}

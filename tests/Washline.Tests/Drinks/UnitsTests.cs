using System.Globalization;
using Washline.Drinks;

namespace Washline.Tests.Drinks;

public class UnitsTests
{
    // item of measures.csv | unit | printed typical, low, high in mL
    [Theory]
    [InlineData("barspoon", "barspoon")]
    [InlineData("teaspoon", "tsp")]
    [InlineData("tablespoon", "tbsp")]
    [InlineData("drop", "drop")]
    [InlineData("splash", "splash")]
    [InlineData("US fluid ounce", "oz")]
    public void A_unit_is_as_large_as_the_published_table_says(string item, string unit)
    {
        var row = File.ReadLines(House.Path("data", "published", "measures.csv")).First(l => l.StartsWith(item + ",volume,", StringComparison.Ordinal)).Split(',');
        var ml = Units.Written(unit)!.Millilitres;
        var typical = double.Parse(row[2], CultureInfo.InvariantCulture);
        double Or(string cell) => cell.Length == 0 ? typical : double.Parse(cell, CultureInfo.InvariantCulture);
        Assert.Equal((typical, Or(row[3]), Or(row[4])), (ml.Typical, ml.Low, ml.High));
    }

    [Fact]
    public void A_dash_lies_within_the_published_range() =>
        Assert.Equal((0.3, 1.3), (Units.Dash.Millilitres.Low, Units.Dash.Millilitres.High));

    [Fact]
    public void Every_unit_says_where_its_size_comes_from() => Assert.All(Units.All, u => Assert.NotEqual("", u.Source));

    [Fact]
    public void No_word_means_two_units() =>
        Assert.Equal(Units.All.Sum(u => u.Words.Count), Units.All.SelectMany(u => u.Words).Distinct(StringComparer.OrdinalIgnoreCase).Count());

    [Theory]
    [InlineData("OZ.", "oz")]
    [InlineData("bar-spoon", "barspoon")]
    [InlineData("Dashes", "dash")]
    public void Capitals_points_and_hyphens_do_not_matter(string written, string unit) => Assert.Equal(unit, Units.Written(written)?.Name);
}

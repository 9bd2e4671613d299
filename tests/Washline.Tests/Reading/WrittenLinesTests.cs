using Washline.Drinks;
using Washline.Reading;

namespace Washline.Tests.Reading;

public class WrittenLinesTests
{
    // written | low | high | unit | kind | strength % | note | amount as written
    [Theory]
    [InlineData("60 ml rye whiskey (50 %)", 60, 60, "ml", "rye-whisky", 50.0, "", "60 ml")]
    [InlineData("60ml rye whiskey", 60, 60, "ml", "rye-whisky", null, "", "60ml")]
    [InlineData("3/4 oz lemon juice, fresh", 0.75, 0.75, "oz", "lemon-juice", null, "fresh", "3/4 oz")]
    [InlineData("¾ oz lemon juice", 0.75, 0.75, "oz", "lemon-juice", null, "", "¾ oz")]
    [InlineData("1 1/2 oz gin", 1.5, 1.5, "oz", "gin", null, "", "1 1/2 oz")]
    [InlineData("1½ oz gin", 1.5, 1.5, "oz", "gin", null, "", "1½ oz")]
    [InlineData("1 ½ oz. gin", 1.5, 1.5, "oz", "gin", null, "", "1 ½ oz.")]
    [InlineData("1-1/2 oz gin", 1.5, 1.5, "oz", "gin", null, "", "1-1/2 oz")]
    [InlineData("1,5 cl gin", 1.5, 1.5, "cl", "gin", null, "", "1,5 cl")]
    [InlineData(".75 fl oz gin", 0.75, 0.75, "oz", "gin", null, "", ".75 fl oz")]
    [InlineData("2–3 dashes aromatic bitters", 2, 3, "dash", "aromatic-bitters", null, "", "2–3 dashes")]
    [InlineData("2 to 3 dashes of aromatic bitters, on top", 2, 3, "dash", "aromatic-bitters", null, "on top", "2 to 3 dashes")]
    [InlineData("1/2-3/4 oz lime juice", 0.5, 0.75, "oz", "lime-juice", null, "", "1/2-3/4 oz")]
    [InlineData("a dash of orange bitters", 1, 1, "dash", "orange-bitters", null, "", "a dash")]
    [InlineData("dash of orange bitters", 1, 1, "dash", "orange-bitters", null, "", "dash")]
    [InlineData("half an ounce of maraschino liqueur", 0.5, 0.5, "oz", "maraschino", null, "", "half an ounce")]
    [InlineData("scant ¾ oz lime juice", 0.675, 0.75, "oz", "lime-juice", null, "", "scant ¾ oz")]
    [InlineData("generous 1 oz gin", 1, 1.1, "oz", "gin", null, "", "generous 1 oz")]
    [InlineData("2 tsp honey", 2, 2, "tsp", "honey", null, "", "2 tsp")]
    [InlineData("1 tbsp. honey", 1, 1, "tbsp", "honey", null, "", "1 tbsp.")]
    [InlineData("1 barspoon absinthe", 1, 1, "barspoon", "absinthe", null, "", "1 barspoon")]
    [InlineData("1 bar spoon of absinthe", 1, 1, "barspoon", "absinthe", null, "", "1 bar spoon")]
    [InlineData("3 drops saline", 3, 3, "drop", "saline", null, "", "3 drops")]
    [InlineData("1 spritz absinthe", 1, 1, "spritz", "absinthe", null, "", "1 spritz")]
    [InlineData("rinse of absinthe", 1, 1, "rinse", "absinthe", null, "", "rinse")]
    [InlineData("absinthe rinse", 1, 1, "rinse", "absinthe", null, "", "rinse")]
    [InlineData("absinthe, to rinse", 1, 1, "rinse", "absinthe", null, "", "to rinse")]
    [InlineData("pinch of salt", 1, 1, "pinch", "salt", null, "", "pinch")]
    [InlineData("splash of soda water", 1, 1, "splash", "soda-water", null, "", "splash")]
    [InlineData("50 g sugar", 50, 50, "g", "sugar", null, "", "50 g")]
    [InlineData("20 grams of honey", 20, 20, "g", "honey", null, "", "20 grams")]
    [InlineData("1/2 c. orange juice", 0.5, 0.5, "cup", "orange-juice", null, "", "1/2 c.")]
    [InlineData("1 teaspoonful of orange marmalade", 1, 1, "tsp", "marmalade", null, "", "1 teaspoonful")]
    [InlineData("between 3 and 4 oz ginger beer", 3, 4, "oz", "ginger-beer", null, "", "between 3 and 4 oz")]
    [InlineData("cl 3 red bitter aperitif", 3, 3, "cl", "red-bitter-aperitif", null, "", "cl 3")]
    [InlineData("2 dashes of bitters [aromatic]", 2, 2, "dash", "aromatic-bitters", null, "", "2 dashes")]
    [InlineData("½ oz crème de mûre over the top", 0.5, 0.5, "oz", "creme-de-mure", null, "over the top", "½ oz")]
    [InlineData("2 parts gin", 2, 2, "part", "gin", null, "", "2 parts")]
    [InlineData("1 part(s) gin", 1, 1, "part", "gin", null, "", "1 part(s)")]
    [InlineData("1 l water", 1, 1, "l", "water", null, "", "1 l")]
    [InlineData("1 dl cream", 1, 1, "dl", "cream", null, "", "1 dl")]
    [InlineData("1 cup ginger beer", 1, 1, "cup", "ginger-beer", null, "", "1 cup")]
    [InlineData("top up soda water", 1, 1, "top up", "soda-water", null, "", "top up")]
    [InlineData("top with soda", 1, 1, "top up", "soda-water", null, "", "top with")]
    [InlineData("top soda", 1, 1, "top up", "soda-water", null, "", "top")]
    [InlineData("soda water to top", 1, 1, "top up", "soda-water", null, "", "to top")]
    [InlineData("soda water, to top", 1, 1, "top up", "soda-water", null, "", "to top")]
    [InlineData("fill with ginger beer", 1, 1, "top up", "ginger-beer", null, "", "fill with")]
    [InlineData("top 60 ml soda", 60, 60, "ml", "soda-water", null, "", "top 60 ml")]
    [InlineData("60 ml soda, to top", 60, 60, "ml", "soda-water", null, "to top", "60 ml")]
    [InlineData("6 mint leaves", 6, 6, "piece", "mint", null, "", "6")]
    [InlineData("6–8 mint leaves", 6, 8, "piece", "mint", null, "", "6–8")]
    [InlineData("2 sprigs of rosemary", 2, 2, "piece", "rosemary", null, "", "2 sprigs")]
    [InlineData("1 egg white", 1, 1, "piece", "egg-white", null, "", "1")]
    [InlineData("one egg white", 1, 1, "piece", "egg-white", null, "", "one")]
    [InlineData("1 egg", 1, 1, "piece", "egg", null, "", "1")]
    [InlineData("1 sugar cube", 1, 1, "piece", "sugar-cube", null, "", "1")]
    [InlineData("2 lime wedges", 2, 2, "piece", "lime-wedge", null, "", "2")]
    [InlineData("2 wedges of lime", 2, 2, "piece", "lime-wedge", null, "", "2 wedges")]
    [InlineData("juice of half a lime", 0.5, 0.5, "piece", "lime-juice", null, "", "juice of half a")]
    [InlineData("juice of 1 lime", 1, 1, "piece", "lime-juice", null, "", "juice of 1")]
    [InlineData("½ lime, juiced", 0.5, 0.5, "piece", "lime-juice", null, "juiced", "½")]
    [InlineData("1 shot of espresso", 1, 1, "shot", "espresso", null, "", "1 shot")]
    [InlineData("rye whiskey 60 ml", 60, 60, "ml", "rye-whisky", null, "", "60 ml")]
    [InlineData("rye whiskey – 2 oz", 2, 2, "oz", "rye-whisky", null, "", "2 oz")]
    [InlineData("rye whiskey: 2 oz", 2, 2, "oz", "rye-whisky", null, "", "2 oz")]
    [InlineData("rye whiskey ..... 1 1/2 oz", 1.5, 1.5, "oz", "rye-whisky", null, "", "1 1/2 oz")]
    [InlineData("rye whiskey, 2 oz", 2, 2, "oz", "rye-whisky", null, "", "2 oz")]
    [InlineData("egg white – 1", 1, 1, "piece", "egg-white", null, "", "1")]
    [InlineData("45 ml bourbon (100 proof)", 45, 45, "ml", "bourbon", 50.0, "", "45 ml")]
    [InlineData("45 ml bourbon 43,5 %", 45, 45, "ml", "bourbon", 43.5, "", "45 ml")]
    [InlineData("45 ml 100 proof bourbon", 45, 45, "ml", "bourbon", 50.0, "", "45 ml")]
    [InlineData("30 ml overproof rum (63 % vol)", 30, 30, "ml", "overproof-rum", 63.0, "", "30 ml")]
    [InlineData("15 ml simple syrup (2:1)", 15, 15, "ml", "rich-syrup", null, "", "15 ml")]
    [InlineData("15 ml 2:1 simple syrup", 15, 15, "ml", "rich-syrup", null, "", "15 ml")]
    [InlineData("15 ml simple syrup (1:1)", 15, 15, "ml", "simple-syrup", null, "", "15 ml")]
    [InlineData("gin (60 ml)", 60, 60, "ml", "gin", null, "", "60 ml")]
    [InlineData("60 ml of chilled, dry vermouth", 60, 60, "ml", "dry-vermouth", null, "", "60 ml")]
    [InlineData("30 ml / 1 oz gin", 30, 30, "ml", "gin", null, "", "30 ml / 1 oz")]
    [InlineData("• 60 ml gin", 60, 60, "ml", "gin", null, "", "60 ml")]
    [InlineData("- 60 ml gin", 60, 60, "ml", "gin", null, "", "60 ml")]
    [InlineData("1. 60 ml gin", 60, 60, "ml", "gin", null, "", "60 ml")]
    [InlineData("60\u00A0ml\tgin", 60, 60, "ml", "gin", null, "", "60 ml")]
    public void A_line_is_read_as_amount_unit_kind_strength_and_note(
        string written, double low, double high, string unit, string kind, double? strength, string note, string words)
    {
        var draft = Draft.Read("Test Drink\n\n" + written, Kinds.Catalogue);
        Assert.Empty(draft.Problems);
        var line = Assert.Single(Assert.Single(draft.Specs).Lines);
        Assert.Equal(low, line.Amount.Low, 9);
        Assert.Equal(high, line.Amount.High, 9);
        Assert.Equal(unit, line.Amount.Unit.Name);
        Assert.Equal(kind, line.Kind?.Id);
        Assert.Equal(strength, line.Strength?.Percent);
        Assert.Equal(note, line.Note);
        Assert.Equal(words, line.Amount.Written);
    }
}

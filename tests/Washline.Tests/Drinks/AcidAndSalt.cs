using Washline.Drinks;
using Washline.Tests.Published;

namespace Washline.Tests.Drinks;

public class AcidAndSalt
{
    private static readonly string[] Acid = ["citric", "malic", "tartaric", "acetic", "lactic", "phosphoric"];

    [Fact]
    public void Every_row_is_of_a_kind_splits_its_acid_and_says_where_it_is_from() => Assert.All(PublishedTable.Of(House.Path("data", "acid-and-salt.csv")), row =>
    {
        Assert.NotNull(Kinds.Catalogue.WithId(row["kind"]));
        Assert.Equal(1, Acid.Sum(a => row.Number(a, 0)), 1e-9);
        Assert.InRange(row.Number("ph", 3), 2, 5);
        Assert.InRange(row.Number("salt_g_l", 0), 0, 1300);
        Assert.True(row["source"].Length > 5, row["kind"]);
    });

    [Fact]
    public void Vinegar_is_acetic_cola_phosphoric_wine_tartaric_and_malic_honey_by_lactic()
    {
        Assert.True(Kinds.Catalogue["vinegar"].Typical.Litre.Acids is { Acetic: > 45, Citric: 0 });
        Assert.True(Kinds.Catalogue["cola"].Typical.Litre.Acids is { Phosphoric: > 0.5, Citric: 0 });
        Assert.True(Kinds.Catalogue["white-wine"].Typical.Litre.Acids is { Tartaric: > 3, Malic: > 2 });
        Assert.True(Kinds.Catalogue["lime-juice"].Typical.Litre.Acids is { Citric: > 40, Malic: > 3 });
        Assert.True(Kinds.Catalogue["honey-syrup"].Typical.Litre.Acids is { Lactic: > 1 });
    }

    [Fact]
    public void A_kind_without_a_row_takes_the_split_of_the_kind_above() =>
        Assert.Equal(Kinds.Catalogue["aromatised-wine"].AcidPerGram.Tartaric, Kinds.Catalogue["sweet-vermouth"].AcidPerGram.Tartaric, 1e-12);

    [Fact]
    public void No_alkali_is_more_than_a_juice_holds() => Assert.All(Kinds.Catalogue.All.Where(k => !k.Is("solid") && !k.IsA("acid-phosphate")), k =>
        Assert.InRange(k.Typical.Litre.Acids.AlkaliMmol, 0, 120));

    [Fact]
    public void A_pinch_of_salt_is_two_fifths_of_a_gram() =>
        Assert.Equal(0.4, Kinds.Catalogue["salt"].Typical.Pour(Washline.Measures.Volume.FromMillilitres(0.33)).Solids.Salt, 0.01);
}

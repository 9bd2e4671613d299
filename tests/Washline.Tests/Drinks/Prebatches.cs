using Washline.Drinks;
using Washline.Mixtures;
using Washline.Reading;

namespace Washline.Tests.Drinks;

public class Prebatches
{
    [Fact]
    public void A_martini_made_up_with_its_water_is_the_martini_that_was_stirred()
    {
        var martini = Served("Martini\n\n75 ml London dry gin (40 %)\n15 ml dry vermouth\nmethod: stir 30 s\n");
        var batch = Prebatch.Of(martini)!;
        Assert.Equal(martini.Served.StrengthPercent, batch.Drink.Strength.Percent, 1e-9);
        Assert.Equal(martini.Served.SugarGPerL, batch.Drink.SugarGPerL, 1e-9);
        Assert.Equal(martini.Served.VolumeMl, batch.ServingMl, 1e-9);
        Assert.Equal(martini.MeltMl, batch.WaterMl, 1e-9);
        Assert.Equal(10 * martini.DilutionPercent, batch.WaterMlPerLitre, 1e-6);
        Assert.Equal(0, batch.Fridge.IceShare);
        Assert.Null(batch.Remark);
    }

    [Fact]
    public void A_strong_batch_pours_from_the_freezer_and_a_weak_one_is_slushy()
    {
        Assert.True(Prebatch.Of(Served("Neat\n\n60 ml gin (40 %)\nmethod: pour without ice\n"))!.PoursFromFreezer);
        var sour = Prebatch.Of(Served("Daiquiri\n\n60 ml light rum (40 %)\n30 ml lime juice\n22 ml simple syrup\nmethod: shake 12 s\n"))!;
        Assert.False(sour.PoursFromFreezer);
        Assert.Equal(Freezing.Point(sour.Drink).Celsius, sour.FreezingC);
    }

    [Fact]
    public void What_is_poured_in_last_stays_out_of_the_batch()
    {
        var collins = Served("Collins\n\n60 ml gin (40 %)\n30 ml lemon juice\n20 ml simple syrup\n90 ml soda water\nmethod: build over ice\nice: cubes\n");
        var batch = Prebatch.Of(collins)!;
        Assert.Equal("What is poured in last stays out of the batch.", batch.Remark);
        Assert.True(batch.ServingMl < 110 + collins.MeltMl);
        Assert.Null(Prebatch.Of(Served("Soda\n\n90 ml soda water\nmethod: build over ice\nice: cubes\n")));
    }

    private static ServedDrink Served(string text) => ServedDrink.Of(Draft.Read(text, Kinds.Catalogue).Specs[0], true);
}

using Washline.Measures;

namespace Washline.Mixtures;

/// <summary>Energy of a drink as food labels reckon it.</summary>
/// <remarks>Factors of Regulation (EU) 1169/2011, Annex XIV, from memory: alcohol 7, carbohydrate 4, fat 9, organic acid 3 kcal/g.</remarks>
public static class Energy
{
    private const double Alcohol = 7;
    private const double Carbohydrate = 4;
    private const double Fat = 9;
    private const double OrganicAcid = 3;
    private const double Other = 2; // protein 4, fibre 2, minerals 0: which of them it is, no table told us

    /// <summary>Kilocalories; the band is what we do not know of protein, fibre and minerals (0 to 4 kcal/g). Phosphoric acid and salt have none.</summary>
    public static Band Kilocalories(Mixture mixture)
    {
        var sure = Alcohol * mixture.Ethanol + Carbohydrate * mixture.Sugars.Total + Fat * mixture.Solids.Fat
            + OrganicAcid * (mixture.Acids.Grams - mixture.Acids.Phosphoric);
        return new Band(sure, sure + Other * mixture.Solids.Other, sure + 2 * Other * mixture.Solids.Other);
    }
}

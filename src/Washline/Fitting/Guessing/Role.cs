namespace Washline.Fitting.Guessing;

/// <summary>What an ingredient does in a drink; data/roles.csv gives it by kind, with reasons.</summary>
public enum Role
{
    /// <summary>Carries the drink.</summary>
    Spirit,

    /// <summary>Absinthe and its like: so loud that it goes by the spoon.</summary>
    Accent,

    /// <summary>Sweetens and flavours at once.</summary>
    Liqueur,

    /// <summary>Sweet, but poured for its bitterness.</summary>
    BitterLiqueur,

    /// <summary>Vermouth, aperitif wine, sherry, port.</summary>
    Fortified,

    /// <summary>Still wine.</summary>
    Wine,

    /// <summary>Sparkling wine.</summary>
    Sparkling,

    /// <summary>Bitters in dashes.</summary>
    Bitters,

    /// <summary>The acid of the drink: lemon, lime.</summary>
    Sour,

    /// <summary>Another juice or purée, espresso.</summary>
    Juice,

    /// <summary>Syrup, honey, sugar.</summary>
    Sweetener,

    /// <summary>Soda, tonic, ginger beer, hot coffee.</summary>
    Lengthener,

    /// <summary>Egg or what foams like it.</summary>
    Egg,

    /// <summary>Cream, milk.</summary>
    Dairy,

    /// <summary>Water.</summary>
    Water,

    /// <summary>Salt, sauces, flower waters.</summary>
    Seasoning,

    /// <summary>Herbs and fruit in pieces.</summary>
    Garnish,
}

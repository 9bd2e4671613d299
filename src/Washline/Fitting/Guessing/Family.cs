namespace Washline.Fitting.Guessing;

/// <summary>Drinks built alike. Names are the trade's; <see cref="Families"/> says how a drink is told.</summary>
public enum Family
{
    /// <summary>Spirit, acid, sugar.</summary>
    Sour,

    /// <summary>Spirit, acid, and a liqueur for some or all of the sugar.</summary>
    Daisy,

    /// <summary>Spirit, acid, sugar, made long with soda.</summary>
    Collins,

    /// <summary>Spirit and something long.</summary>
    Highball,

    /// <summary>Spirit and fruit juice, shaken.</summary>
    Fruit,

    /// <summary>Spirit and vermouth or another fortified wine, stirred.</summary>
    Stirred,

    /// <summary>Spirit and a liqueur, nothing else of weight.</summary>
    Duo,

    /// <summary>Spirit, a little sugar, bitters.</summary>
    OldFashioned,

    /// <summary>Wine or sparkling wine carries it.</summary>
    Spritz,

    /// <summary>Cream, milk or a whole egg makes it rich.</summary>
    Creamy,
}

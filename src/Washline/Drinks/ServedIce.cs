namespace Washline.Drinks;

/// <summary>The ice that the drink is served on.</summary>
public enum ServedIce
{
    /// <summary>Up: no ice in the glass.</summary>
    None,

    /// <summary>Ice cubes.</summary>
    Cubes,

    /// <summary>One large cube.</summary>
    LargeCube,

    /// <summary>Crushed ice.</summary>
    Crushed,
}

namespace Washline.Mixtures;

/// <summary>Ice by the size of its pieces.</summary>
public enum IceKind
{
    /// <summary>Cubes from the usual tray, 32 mm.</summary>
    Cubes,

    /// <summary>One large cube, 50 mm.</summary>
    Large,

    /// <summary>Cracked or small ice, 20 mm.</summary>
    Cracked,

    /// <summary>Crushed ice, 8 mm.</summary>
    Crushed,
}

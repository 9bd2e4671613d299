namespace Washline.Mixtures;

/// <summary>How a drink meets its ice.</summary>
public enum Technique
{
    /// <summary>Mixed and poured without any ice.</summary>
    NoIce,

    /// <summary>Built over ice in its glass, with a short stir.</summary>
    Build,

    /// <summary>Stirred with ice and strained.</summary>
    Stir,

    /// <summary>Shaken hard with ice and strained.</summary>
    Shake,

    /// <summary>Churned with crushed ice in its glass.</summary>
    Swizzle,

    /// <summary>Blended with ice, all of which stays in the drink.</summary>
    Blend,
}

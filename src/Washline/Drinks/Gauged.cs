namespace Washline.Drinks;

/// <summary>What can be read off a drink that was shaken or stirred.</summary>
public enum Gauged
{
    /// <summary>Volume after over volume before.</summary>
    Volume,

    /// <summary>Weight after over weight before.</summary>
    Weight,

    /// <summary>Temperature right after straining, °C.</summary>
    Temperature,
}

namespace Washline.Fitting.AtHome;

/// <summary>What of the home a reason is about.</summary>
public enum HomeMatter
{
    /// <summary>A tool that is not there.</summary>
    Tool,

    /// <summary>Ice that cannot be made.</summary>
    Ice,

    /// <summary>A glass that is not there.</summary>
    Glass,

    /// <summary>A measure that is not there, or is marked in another unit.</summary>
    Measure,

    /// <summary>A garnish that is not there.</summary>
    Garnish,
}

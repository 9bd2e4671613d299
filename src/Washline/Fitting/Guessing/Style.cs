namespace Washline.Fitting.Guessing;

/// <summary>How a drink is known to be served.</summary>
public enum Style
{
    /// <summary>Nobody knows.</summary>
    Any,

    /// <summary>Without ice in the glass.</summary>
    Up,

    /// <summary>Short, on ice.</summary>
    Rocks,

    /// <summary>Long, on ice.</summary>
    Tall,
}

namespace Washline.Drinks;

/// <summary>Whether the maker's spec may be passed on.</summary>
public enum PassOn
{
    /// <summary>Not known: find out before it leaves the house.</summary>
    Ask,

    /// <summary>It may.</summary>
    Yes,

    /// <summary>It stays in the house.</summary>
    No,
}

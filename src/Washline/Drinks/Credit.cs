namespace Washline.Drinks;

/// <summary>Who made the drink, where, how we know it, and whether it may be passed on.</summary>
/// <param name="Maker">The person.</param>
/// <param name="Where">The bar, book or place.</param>
/// <param name="Known">How we know it: told in person, a menu, a page.</param>
/// <param name="PassOn">Whether it may leave the house.</param>
public sealed record Credit(string Maker, string Where, string Known, PassOn PassOn)
{
    /// <summary>Nothing known: ask before passing it on.</summary>
    public static Credit Unknown { get; } = new("", "", "", PassOn.Ask);
}

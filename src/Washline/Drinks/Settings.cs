namespace Washline.Drinks;

/// <summary>What the household has told us once.</summary>
/// <param name="Country">Whose standard drink is counted: a code of the table of standard drinks, such as <c>us</c>, <c>uk</c>, <c>who</c>.</param>
/// <param name="IceWet">Whether the ice is wet (0 °C) or straight from the freezer (−18 °C); none as long as nobody has said.</param>
public sealed record Settings(string Country, bool? IceWet)
{
    /// <summary>How the person at home shakes and stirs, where that has been measured.</summary>
    public Hand Hand { get; init; } = Hand.Unknown;

    /// <summary>As long as nobody has said anything.</summary>
    public static Settings Usual { get; } = new("us", null);
}

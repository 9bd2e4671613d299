namespace Washline.Fitting;

/// <summary>A bartender's word for the way an attribute moves.</summary>
public static class Direction
{
    /// <summary>The word for an attribute that moves up or down: <c>weaker</c>, <c>sweeter</c> …</summary>
    /// <param name="attribute">sugar, acid, strength, volume, temperature, flavour.</param>
    /// <param name="jnd">How far, signed.</param>
    public static string Word(string attribute, double jnd) => (attribute, jnd > 0) switch
    {
        ("sugar", true) => "sweeter",
        ("sugar", false) => "drier",
        ("acid", true) => "sharper",
        ("acid", false) => "softer",
        ("strength", true) => "stronger",
        ("strength", false) => "weaker",
        ("volume", true) => "longer",
        ("volume", false) => "shorter",
        ("temperature", true) => "warmer",
        ("temperature", false) => "colder",
        (_, true) => "more of it",
        _ => "less of it",
    };
}

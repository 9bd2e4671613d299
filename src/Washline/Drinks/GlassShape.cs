namespace Washline.Drinks;

/// <summary>The shape of a glass's bowl, as its side is seen.</summary>
public enum GlassShape
{
    /// <summary>A straight tumbler, tall or short: rocks, highball.</summary>
    Tumbler,

    /// <summary>A rounded shallow bowl on a stem: coupe.</summary>
    Coupe,

    /// <summary>A cone on a stem: the martini glass.</summary>
    Cone,

    /// <summary>A small deep bowl on a stem, straight above: nick and nora.</summary>
    Tulip,

    /// <summary>A tall narrow bowl on a stem.</summary>
    Flute,

    /// <summary>A wide round bowl on a stem: wine glass, copa.</summary>
    Balloon,

    /// <summary>A metal cup, widening upwards.</summary>
    Cup,

    /// <summary>The same width from bottom to rim: a straight glass, a beaker.</summary>
    Cylinder,

    /// <summary>A deep round bowl that widens all the way: a dessert bowl, a wide saucer on a foot.</summary>
    Bowl,
}

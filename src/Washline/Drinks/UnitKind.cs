namespace Washline.Drinks;

/// <summary>How a unit becomes a volume.</summary>
public enum UnitKind
{
    /// <summary>Poured by jigger: ml, cl, oz.</summary>
    Poured,

    /// <summary>Spooned: barspoon, teaspoon, tablespoon.</summary>
    Spooned,

    /// <summary>Small and counted: dash, drop, spritz, rinse, pinch.</summary>
    Dashed,

    /// <summary>A share of the whole: part.</summary>
    Part,

    /// <summary>Weighed: grams, whose room the ingredient knows.</summary>
    Weighed,

    /// <summary>Counted pieces, whose size the ingredient knows.</summary>
    Piece,

    /// <summary>As much as the glass still holds.</summary>
    TopUp,

    /// <summary>No amount is written: a menu line, or <c>some lime juice</c>. It gives no volume until somebody says how much.</summary>
    Unsaid,
}

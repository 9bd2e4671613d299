namespace Washline.Reading;

/// <summary>The form in which a spec arrives.</summary>
public enum TextForm
{
    /// <summary>Written down: one ingredient a line, a table, or prose.</summary>
    Written,

    /// <summary>Somebody talking while mixing, without times.</summary>
    Spoken,

    /// <summary>Somebody talking, in pieces with times.</summary>
    Captions,

    /// <summary>A drink's ingredients on one line of a menu, without amounts.</summary>
    MenuLine,

    /// <summary>Recipe data after schema.org, alone or inside a page.</summary>
    RecipeData,
}

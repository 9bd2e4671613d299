namespace Washline.Reading;

/// <summary>What a line of a text was read as.</summary>
public enum ReadAs
{
    /// <summary>The drink's name.</summary>
    Title,

    /// <summary>An ingredient with its amount.</summary>
    Ingredient,

    /// <summary>How it is made.</summary>
    Method,

    /// <summary>The ice it is served on.</summary>
    Ice,

    /// <summary>The glass.</summary>
    Glass,

    /// <summary>The garnish.</summary>
    Garnish,

    /// <summary>Maker, place, how it is known, whether it may be passed on.</summary>
    Credit,

    /// <summary>How an ingredient is made at home.</summary>
    Made,

    /// <summary>A remark.</summary>
    Note,

    /// <summary>How much a part is.</summary>
    Part,

    /// <summary>A name over the lines that follow it, such as <c>Ingredients</c>.</summary>
    Heading,

    /// <summary>A rule between two specs.</summary>
    Divider,

    /// <summary>Talk that is no part of a spec; set aside, not lost.</summary>
    Talk,

    /// <summary>Marks of the form itself: times and numbers of captions, braces and names of data.</summary>
    Marks,

    /// <summary>Not read: a problem says why.</summary>
    Problem,
}

namespace Washline.Reading;

/// <summary>What a named line such as <c>glass: coupe</c> gives.</summary>
internal enum Key
{
    Title,
    Ingredients,
    Method,
    Ice,
    Glass,
    Garnish,
    Maker,
    Where,
    Known,
    PassOn,
    Note,
    Part,
    Made,
}

using Washline.Drinks;

namespace Washline.Fitting;

/// <summary>What one waiting spec becomes with some of the wanted bottles. Of a set of bottles only those matter that would be offered for one of its lines, so each case is worked out once; by one thread at a time.</summary>
/// <param name="was">The fit at home.</param>
/// <param name="matters">The bottles that matter, a bit each.</param>
/// <param name="home">The home with some of them.</param>
/// <param name="isBought">Which bottles those are.</param>
internal sealed class Opening(Fit was, ulong matters, Func<ulong, Bar> home, Func<ShelfItem, bool> isBought)
{
    private readonly Tried tried = new();
    private readonly Dictionary<ulong, double?> atAGlance = [];
    private readonly Dictionary<ulong, bool> isOpen = [];

    /// <summary>The bottles that matter, a bit each.</summary>
    public ulong Matters => matters;

    /// <summary>How near it has to come, JND.</summary>
    public double Enough { get; } = was.OutOfReach.Count > 0 ? Tonight.StillThatDrink : Tonight.Noticed;

    /// <summary>How far off it is with those bottles by a first look, JND, where that is near enough.</summary>
    public double? AtAGlance(ulong set)
    {
        if (atAGlance.TryGetValue(set & matters, out var known)) return known;
        return atAGlance[set & matters] = was.With(home(set & matters)).Start(Enough, isBought, tried);
    }

    /// <summary>Whether they bring it near enough.</summary>
    public bool IsOpen(ulong set)
    {
        if (isOpen.TryGetValue(set & matters, out var known)) return known;
        return isOpen[set & matters] = AtAGlance(set) is not null || was.With(home(set & matters)).ComesWithin(Enough, isBought, tried);
    }
}

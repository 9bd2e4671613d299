using Washline.Drinks;

namespace Washline.Fitting;

/// <summary>A spec that bottles to buy bring within reach.</summary>
public sealed class Opened
{
    private readonly Lazy<Fit> fit;

    internal Opened(Spec spec, Bar richer, Kinds kinds) => (Spec, fit) = (spec, new(() => Fitting.Fit.Nearest(spec, richer, kinds)));

    /// <summary>The spec.</summary>
    public Spec Spec { get; }

    /// <summary>Its fit to the home with those bottles; found when it is asked for.</summary>
    public Fit Fit => fit.Value;
}

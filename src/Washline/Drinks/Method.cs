using Washline.Mixtures;

namespace Washline.Drinks;

/// <summary>How the maker makes it.</summary>
/// <param name="Technique">How it meets its ice.</param>
/// <param name="Seconds">How long, where written.</param>
/// <param name="Written">The maker's own words; empty when nothing was written.</param>
public sealed record Method(Technique Technique, double? Seconds, string Written)
{
    /// <summary>The time it takes when the maker does not say, seconds. Shake and stir as published (docs/physics.md); the rest estimates.</summary>
    public double UsualSeconds => Seconds ?? Technique switch
    {
        Technique.Shake => 12,
        Technique.Stir => 30,
        Technique.Swizzle => 20,
        Technique.Build => 60,
        Technique.Blend => 20,
        _ => 0,
    };
}

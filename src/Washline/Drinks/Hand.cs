using Washline.Measures;
using Washline.Mixtures;

namespace Washline.Drinks;

/// <summary>How a person shakes and stirs, as a factor on the calibrated rate of heat from drink to ice: 1 is the rate of docs/physics.md.</summary>
/// <param name="Shake">The factor for shaking, 0.2 to 5, with the band that was earned; none as long as nobody has measured.</param>
/// <param name="Stir">The factor for stirring.</param>
public sealed record Hand(Band? Shake, Band? Stir)
{
    /// <summary>The least and the most that a factor may be: outside it, something was misread. Ours.</summary>
    public const double Least = 0.2, Most = 5;

    /// <summary>Nobody has measured.</summary>
    public static Hand Unknown { get; } = new(null, null);

    /// <summary>The factor for that technique; none where nobody has measured, or where there is none to measure.</summary>
    public Band? Of(Technique technique) => technique switch
    {
        Technique.Shake => Shake,
        Technique.Stir => Stir,
        _ => null,
    };

    /// <summary>The same with another factor for shaking or stirring; none forgets it.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Another technique.</exception>
    public Hand With(Technique technique, Band? factor) => technique switch
    {
        Technique.Shake => this with { Shake = factor },
        Technique.Stir => this with { Stir = factor },
        _ => throw new ArgumentOutOfRangeException(nameof(technique), technique, "Only shaking and stirring have a hand of their own."),
    };

    /// <summary>What the rate is multiplied by.</summary>
    internal double Rate(Technique technique) => Of(technique)?.Typical ?? 1;
}

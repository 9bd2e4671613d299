namespace Washline.Mixtures;

/// <summary>Grams of what is neither water, alcohol, sugar nor acid.</summary>
/// <param name="Salt">Grams of table salt.</param>
/// <param name="Fat">Grams of fat.</param>
/// <param name="Other">Grams of protein, pulp, minerals and the like.</param>
/// <param name="OtherMl">Millilitres that these last take up.</param>
public readonly record struct Solids(double Salt, double Fat, double Other, double OtherMl)
{
    /// <summary>Millilitres that a gram of protein, pulp and minerals takes up; memory.</summary>
    public const double PulpMlPerG = 0.75;

    /// <summary>Millilitres that a gram of fat takes up; memory.</summary>
    public const double FatMlPerG = 1.08;

    /// <summary>All of them, grams.</summary>
    public double Total => Salt + Fat + Other;

    /// <summary>That many grams of protein, pulp and minerals, of the usual room.</summary>
    public static Solids OfPulp(double grams) => new(0, 0, grams, grams * PulpMlPerG);

    /// <summary>Millilitres they add to that many grams of water and ethanol.</summary>
    /// <remarks>Salt: 0.293 mL/g in thin brine, 0.349 at 20 % by mass; a line through densities of brine from memory, within 0.003 mL/g of them.</remarks>
    public double Millilitres(double liquidG) =>
        (Salt <= 0 ? 0 : Salt * (0.293 + 0.28 * Salt / (Salt + liquidG))) + Fat * FatMlPerG + OtherMl;

    public static Solids operator +(Solids a, Solids b) => new(a.Salt + b.Salt, a.Fat + b.Fat, a.Other + b.Other, a.OtherMl + b.OtherMl);

    public static Solids operator *(Solids a, double times) => new(a.Salt * times, a.Fat * times, a.Other * times, a.OtherMl * times);

    /// <summary>The sum, as <c>+</c>.</summary>
    public static Solids Add(Solids left, Solids right) => left + right;

    /// <summary>The multiple, as <c>*</c>.</summary>
    public static Solids Multiply(Solids left, double right) => left * right;
}

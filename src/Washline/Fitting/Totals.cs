using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Washline.Drinks;
using Washline.Mixtures;

namespace Washline.Fitting;

/// <summary>What a search adds up, sixteen numbers at once: everything in the glass before the ice's water, and what of it meets the ice.</summary>
/// <param name="Poured">Grams of water, ethanol, sugars, and sugars by sweetness as sucrose.</param>
/// <param name="Rest">Grams of acid as citric, grams of the acids themselves, mL of the acids, mL of the solids.</param>
/// <param name="Met">Of what meets the ice: grams in all, ethanol, double sugars, single sugars with the acid.</param>
/// <param name="Last">Grams of what goes in last; what it all cost; of what goes in last grams of ethanol, and of neither water nor ethanol.</param>
internal readonly record struct Totals(Vector256<double> Poured, Vector256<double> Rest, Vector256<double> Met, Vector256<double> Last)
{
    /// <summary>How many numbers that is.</summary>
    public const int Count = 16;

    private static readonly int[] OfVolume = [0, 1, 2, 5, 6, 7, 8, 9, 10, 11, 12, 14, 15];

    /// <summary>The lanes on which the volume or the temperature of the drink depends.</summary>
    public static ReadOnlySpan<int> Weighed => OfVolume;

    public double Water => Poured[0];

    public double Ethanol => Poured[1];

    public double Sugar => Poured[2];

    public double Sweet => Poured[3];

    public double Acid => Rest[0];

    public double MetMass => Met[0];

    public double LastMass => Last[0];

    /// <summary>That mixture, going in first or last; in the glass what goes in last meets the ice too.</summary>
    public static Totals Of(in Mixture m, bool last, bool inGlass)
    {
        // Salt takes up a little less room the thinner its brine: as in a litre of water here, for a pinch of it the same.
        var solids = m.Solids.Millilitres(1000);
        var met = Vector256.Create(m.Mass, m.Ethanol, m.Sugars.Disaccharides, Response.Small(m));
        return new Totals(
            Vector256.Create(m.Water, m.Ethanol, m.Sugars.Total, m.Sugars.AsSucrose),
            Vector256.Create(m.Acid, m.Acids.Grams, m.Acids.Millilitres, solids),
            last && !inGlass ? Vector256<double>.Zero : met,
            last ? Vector256.Create(m.Mass, 0, m.Ethanol, m.Mass - m.Water - m.Ethanol) : Vector256<double>.Zero);
    }

    /// <summary>What it all cost; what has no price counts as nothing.</summary>
    public double Price => Last[1];

    /// <summary>The same at that price.</summary>
    public Totals At(double price) => this with { Last = Last.WithElement(1, price) };

    /// <summary>Those numbers, in order.</summary>
    public static Totals Of(ReadOnlySpan<double> lanes) =>
        new(Vector256.Create(lanes[..4]), Vector256.Create(lanes[4..8]), Vector256.Create(lanes[8..12]), Vector256.Create(lanes[12..16]));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Totals operator +(in Totals a, in Totals b) => new(a.Poured + b.Poured, a.Rest + b.Rest, a.Met + b.Met, a.Last + b.Last);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Totals operator -(in Totals a, in Totals b) => new(a.Poured - b.Poured, a.Rest - b.Rest, a.Met - b.Met, a.Last - b.Last);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Totals operator *(in Totals a, double by) => new(a.Poured * by, a.Rest * by, a.Met * by, a.Last * by);

    /// <summary>The sum of the products, lane by lane.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public double Dot(in Totals along) => Vector256.Sum(Poured * along.Poured + Rest * along.Rest + Met * along.Met + Last * along.Last);

    /// <summary>The same with so much more in one lane.</summary>
    public Totals With(int lane, double more) => (lane / 4) switch
    {
        0 => this with { Poured = Poured.WithElement(lane % 4, Poured[lane % 4] + more) },
        1 => this with { Rest = Rest.WithElement(lane % 4, Rest[lane % 4] + more) },
        2 => this with { Met = Met.WithElement(lane % 4, Met[lane % 4] + more) },
        _ => this with { Last = Last.WithElement(lane % 4, Last[lane % 4] + more) },
    };
}

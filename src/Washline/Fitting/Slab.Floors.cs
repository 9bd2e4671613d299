using System.Buffers;
using System.Runtime.Intrinsics;
using Washline.Drinks;
using Washline.Measures;

namespace Washline.Fitting;

/// <content>What shows of candidates by the sums of their lines alone.</content>
internal sealed partial class Slab
{
    private static readonly double PerDegree = Math.Sqrt(Meant.OfCelsius); // JND

    // JND that a drink moves at the most when its volume alone grows by that share: no count of a taste grows faster than by 1 / k.
    private static readonly double PerShare = Math.Sqrt(
        1 / (Jnd.Sugar.K * Jnd.Sugar.K) + 1 / (Jnd.Acid.K * Jnd.Acid.K) + 1 / (Jnd.Strength.K * Jnd.Strength.K) + Moves.VolumeWeight / (Jnd.VolumeShare * Jnd.VolumeShare));

    /// <summary>The place in the grid of a choice.</summary>
    public int Place(int line, int c) => stretch.Kept[line][c];

    /// <summary>Whether it is the maker's amount.</summary>
    public bool IsMakers(int line, int c) => grid.IsMakers(line)[stretch.Kept[line][c]];

    /// <summary>What it adds to the sums.</summary>
    public Sums Adds(int line, int c) => At(from[line] + c);

    /// <summary>The least that it adds to D² by itself.</summary>
    public double Own(int line, int c) => cost[from[line] + c] - (price > 0 && !IsMakers(line, c) ? price : 0);

    /// <summary>The choices of a line that a candidate below that D² can contain, the cheapest under the plane first.</summary>
    public int[] Cheapest(int line, double mostSquare)
    {
        var costs = Reduced(line);
        var (gap, count) = (mostSquare - Bound, 0);
        foreach (var c in costs) count += c <= gap ? 1 : 0;
        var (keys, found) = (ArrayPool<double>.Shared.Rent(count), new int[count]);
        for (var (c, k) = (0, 0); c < costs.Length; c++)
        {
            if (costs[c] <= gap) (keys[k], found[k++]) = (costs[c], c);
        }

        keys.AsSpan(0, count).Sort(found.AsSpan());
        ArrayPool<double>.Shared.Return(keys);
        return found;
    }

    /// <summary>What the first four of those choices add, side by side; where they are fewer, the last stands in the places that are left.</summary>
    public FourSums Adds(int line, ReadOnlySpan<int> choices)
    {
        var (i, j, k, l) = (choices[0], choices[Math.Min(1, choices.Length - 1)], choices[Math.Min(2, choices.Length - 1)], choices[Math.Min(3, choices.Length - 1)]);
        var first = from[line];
        return Adds([first + i, first + j, first + k, first + l]) with { Own = Vector256.Create(Own(line, i), Own(line, j), Own(line, k), Own(line, l)) };
    }

    /// <summary>D² of four candidates, but for what the other lines add by themselves: none of the four has less. Volume and temperature are taken from the sums, as far off as they may be.</summary>
    /// <param name="rest">What the other lines add to the sums.</param>
    /// <param name="last">What the last line adds.</param>
    public Vector256<double> Floors(in Sums rest, in FourSums last)
    {
        var ml = last.Volume + Vector256.Create(volumeFrom + rest.Volume);
        var celsius = last.Celsius + Vector256.Create(celsiusFrom + rest.Celsius);
        var square = meant.Square(
            last.Sweet + Vector256.Create(rest.Sweet), last.Acid + Vector256.Create(rest.Acid), last.Ethanol + Vector256.Create(rest.Ethanol), ml, Vector256<double>.One / ml, celsius);
        var jnd = Vector256.MaxNative(Vector256<double>.Zero, Vector256.Sqrt(square) - Vector256.Create(offJnd));
        return jnd * jnd + last.Own;
    }
}

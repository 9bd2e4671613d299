using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Washline.Fitting;

/// <summary>The least of many numbers that come four at a time, and its place; of equal ones the first.</summary>
/// <param name="from">Where the first four stand.</param>
internal struct Leasts(int from)
{
    private Vector256<double> least = Vector256.Create(double.PositiveInfinity);
    private Vector256<double> places = Vector256.Create((double)from) + Steps;

    private static Vector256<double> Steps => Vector256.Create(0.0, 1, 2, 3);

    /// <summary>Sees four.</summary>
    /// <param name="values">The numbers.</param>
    /// <param name="at">Where the first of them stands.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void See(Vector256<double> values, int at)
    {
        var less = Vector256.LessThan(values, least);
        least = Vector256.ConditionalSelect(less, values, least);
        places = Vector256.ConditionalSelect(less, Vector256.Create((double)at) + Steps, places);
    }

    /// <summary>The least.</summary>
    public readonly double Value
    {
        get
        {
            var two = Vector128.MinNative(least.GetLower(), least.GetUpper());
            return Vector128.MinNative(two, Vector128.Shuffle(two, Vector128.Create(1, 0))).ToScalar();
        }
    }

    /// <summary>Its place.</summary>
    public readonly int Place
    {
        get
        {
            var among = Vector256.Equals(least, Vector256.Create(Value));
            var lanes = among.ExtractMostSignificantBits();
            if (BitOperations.IsPow2(lanes)) return (int)places.GetElement(BitOperations.TrailingZeroCount(lanes));
            var first = Vector256.ConditionalSelect(among, places, Vector256.Create(double.PositiveInfinity));
            return (int)Math.Min(Math.Min(first[0], first[1]), Math.Min(first[2], first[3]));
        }
    }
}

using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Washline.Mixtures;

/// <summary>What moves while drink and ice are together, or how fast it moves, of four drinks side by side.</summary>
internal struct IceState
{
    /// <summary>Cube root of the share of ice that is left.</summary>
    public Vector256<double> Ice;

    /// <summary>Heat of the drink, J.</summary>
    public Vector256<double> Joules;

    /// <summary>Temperature of the vessel, °C.</summary>
    public Vector256<double> Vessel;

    /// <summary>Temperature of the core of the ice, °C.</summary>
    public Vector256<double> Core;

    /// <summary>a times the one and b times the other.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Sum(double a, in IceState x, double b, in IceState y, out IceState sum)
    {
        sum.Ice = x.Ice * a + y.Ice * b;
        sum.Joules = x.Joules * a + y.Joules * b;
        sum.Vessel = x.Vessel * a + y.Vessel * b;
        sum.Core = x.Core * a + y.Core * b;
    }

    /// <summary>a, b and c times those.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Sum(double a, in IceState x, double b, in IceState y, double c, in IceState z, out IceState sum)
    {
        sum.Ice = x.Ice * a + y.Ice * b + z.Ice * c;
        sum.Joules = x.Joules * a + y.Joules * b + z.Joules * c;
        sum.Vessel = x.Vessel * a + y.Vessel * b + z.Vessel * c;
        sum.Core = x.Core * a + y.Core * b + z.Core * c;
    }

    /// <summary>From there on, b times this and c times that.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void From(in IceState start, double b, in IceState y, double c, in IceState z, out IceState sum)
    {
        sum.Ice = start.Ice + (y.Ice * b + z.Ice * c);
        sum.Joules = start.Joules + (y.Joules * b + z.Joules * c);
        sum.Vessel = start.Vessel + (y.Vessel * b + z.Vessel * c);
        sum.Core = start.Core + (y.Core * b + z.Core * c);
    }
}

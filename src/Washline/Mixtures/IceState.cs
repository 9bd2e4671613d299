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
        sum.Ice = Four.Plus(x.Ice * a, y.Ice, Vector256.Create(b));
        sum.Joules = Four.Plus(x.Joules * a, y.Joules, Vector256.Create(b));
        sum.Vessel = Four.Plus(x.Vessel * a, y.Vessel, Vector256.Create(b));
        sum.Core = Four.Plus(x.Core * a, y.Core, Vector256.Create(b));
    }

    /// <summary>a, b and c times those.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Sum(double a, in IceState x, double b, in IceState y, double c, in IceState z, out IceState sum)
    {
        sum.Ice = Four.Plus(Four.Plus(x.Ice * a, y.Ice, Vector256.Create(b)), z.Ice, Vector256.Create(c));
        sum.Joules = Four.Plus(Four.Plus(x.Joules * a, y.Joules, Vector256.Create(b)), z.Joules, Vector256.Create(c));
        sum.Vessel = Four.Plus(Four.Plus(x.Vessel * a, y.Vessel, Vector256.Create(b)), z.Vessel, Vector256.Create(c));
        sum.Core = Four.Plus(Four.Plus(x.Core * a, y.Core, Vector256.Create(b)), z.Core, Vector256.Create(c));
    }

    /// <summary>From there on, b times this and c times that.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void From(in IceState start, double b, in IceState y, double c, in IceState z, out IceState sum)
    {
        sum.Ice = Four.Plus(Four.Plus(start.Ice, y.Ice, Vector256.Create(b)), z.Ice, Vector256.Create(c));
        sum.Joules = Four.Plus(Four.Plus(start.Joules, y.Joules, Vector256.Create(b)), z.Joules, Vector256.Create(c));
        sum.Vessel = Four.Plus(Four.Plus(start.Vessel, y.Vessel, Vector256.Create(b)), z.Vessel, Vector256.Create(c));
        sum.Core = Four.Plus(Four.Plus(start.Core, y.Core, Vector256.Create(b)), z.Core, Vector256.Create(c));
    }
}

using Washline.Measures;

namespace Washline.Drinks;

/// <summary>A jigger or other measure with marks.</summary>
/// <param name="Name">What the household calls it.</param>
/// <param name="Unit">The unit of its marks: <c>oz</c> or <c>ml</c>.</param>
/// <param name="Step">From mark to mark, in that unit.</param>
/// <param name="EyeStep">The finest step that can be judged by eye between marks, in that unit; the same as <paramref name="Step"/> for none.</param>
/// <param name="Largest">Its largest mark, in that unit.</param>
public sealed record Measure(string Name, string Unit, double Step, double EyeStep, double Largest)
{
    /// <summary>Millilitres in one of its units; an ounce on a home jigger is 30 mL by common practice when its marks are in both, so the defined 29.57 is kept.</summary>
    public double UnitMl => Unit == "oz" ? Volume.MillilitresPerFluidOunce : 1;
}

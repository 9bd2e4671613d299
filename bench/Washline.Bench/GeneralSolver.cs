using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.OdeSolvers;
using Washline.Mixtures;

namespace Washline.Bench;

/// <summary>The equations of docs/physics.md for drink and ice, handed to a general solver: the reference beside which the program's own steps are timed.</summary>
internal static class GeneralSolver
{
    /// <summary>Grams of water the ice has given after that many seconds, in that many steps. What moves: heat of the drink, J; ice, g; vessel and core, °C.</summary>
    public static double MeltG(Technique technique, Mixture drink, Ice ice, double seconds, int steps)
    {
        var contact = IceContact.Of(technique, drink, 20, ice);
        var (solid, solids) = (ice.Grams - ice.FilmG, drink.Mass - drink.Water - drink.Ethanol);
        var freezing = FreezingCurve.Of(drink);
        var start = Vector<double>.Build.Dense([Heat.Of(drink.Ethanol, drink.Water, solids).At(20), solid, contact.VesselC, ice.TemperatureC]);
        var course = RungeKutta.FourthOrder(start, 0, seconds, steps + 1, (_, y) =>
        {
            var (left, vessel, core) = (Math.Max(0, y[1]), y[2], y[3]);
            var water = drink.Water + ice.Grams - left;
            var t = Heat.Of(drink.Ethanol, water, solids).TemperatureOf(y[0]);
            var cold = freezing.Celsius(water);
            var flow = contact.RateWPerK * Math.Pow(left / solid, 2.0 / 3) * (t - cold);
            var warming = (cold - core) / ice.CoreSeconds;
            var melting = (flow - left * (2.10 + 0.0072 * core) * warming) / (333.7 + 4.2 * cold - 2.10 * core - 0.0036 * core * core);
            var follow = (t - vessel) / contact.VesselSeconds;
            var joules = 4.2 * cold * melting - flow - contact.VesselJPerK * follow + contact.LeakWPerK * (contact.RoomC - t);
            return Vector<double>.Build.Dense([joules, -melting, follow, warming]);
        });
        return ice.Grams - course[^1][1];
    }
}

using Google.OrTools.Sat;
using Washline.Drinks;
using Washline.Fitting;
using Washline.Measures;

namespace Washline.Tests.SecondOpinion;

/// <summary>The fit as programs in whole numbers, handed to a general solver (CP-SAT of Google.OrTools): the same lines, bottles and marks, the same attributes, weights, flavours and stand-ins.</summary>
/// <remarks>
/// One program for each stretch of served volume, 2 % wide, from the volume as meant outwards, each told the best answer so far; then once more about that answer, in stretches of 0.4 % up to 2 %
/// either way. A choice is a yes or no, one for each line; grams, volume and temperature are sums over the choices; what sugar, acid, strength, volume and temperature add to D² is held above
/// its tangents, which stand 0.02 JND from what was meant and farther each by three tenths; what a line's flavour and stand-in add is a number for each choice.
/// <para>
/// It leaves out: what two changes do together to the ice and to the volume (a choice's share of volume and temperature is that of the full model with this one line changed, the others being the
/// maker's, the second time those of the first answer); that flavours thin out within a stretch; and of a level its second order in the volume. A division by the volume in the program itself was tried:
/// nothing is left out then but the ice, and it finds no proof in ten seconds where this takes less than half of one. Nothing comes from our own search, its quick guess or its bounds, and the full
/// model judges both answers.
/// </para>
/// </remarks>
internal sealed class IntegerProgram
{
    private const double PerSquare = 1e5; // whole numbers to 1 of D²
    private const double PerSlope = 1e4;
    private const double PerMl = 1000;
    private const double PerGram = 10_000;
    private const double PerCelsius = 1000;
    private const double Coarse = 1.02; // a stretch of volume, as a ratio
    private const double Fine = 1.004;
    private const double Around = 0.02;
    private const double Effort = 5; // for one stretch, in the solver's own measure of work, near a second: the same on a busy machine

    private readonly Search search;
    private readonly Meant meant;
    private readonly (Choice Choice, Totals Totals)[][] lines;
    private Sip centre;
    private (double Ml, double Celsius)[][] moved = [];
    private (int[] At, double Square)? best;

    private IntegerProgram(Search search, Sip meant) => (this.search, this.meant, lines) =
        (search, new Meant(meant), [.. Enumerable.Range(0, search.Grid.Lines).Select(i => search.Grid.Choices(i).Select((c, k) => (c, search.Grid.Line(i).Adds(k))).ToArray())]);

    /// <summary>The choices the solver finds, their D by the full model, and whether it has proven for every stretch that its program has no better ones.</summary>
    /// <param name="search">The problem; nothing is asked of it but its grid, and the drink of given choices by the full model.</param>
    /// <param name="meant">The drink that is aimed at.</param>
    /// <param name="again">Whether there is a second time, about the first answer.</param>
    public static (Choice[] Choices, double Distance, bool IsProven) Solve(Search search, Sip meant, bool again = true)
    {
        var program = new IntegerProgram(search, meant);
        var at = search.Grid.Makers();
        program.Centre(at);
        var most = search.Distance(search.Grid.Choices(at));
        var proven = program.Outwards(program.meant.Sip.VolumeMl, Coarse, double.PositiveInfinity, most * most + 0.3);
        if (again && program.best is { } first)
        {
            program.Centre(first.At);
            program.best = null;
            proven &= program.Outwards(program.centre.VolumeMl, Fine, Around, first.Square + 0.1);
        }

        var choices = search.Grid.Choices(program.best?.At ?? at);
        return (choices, search.Distance(choices), proven);
    }

    // What each choice does to volume and temperature, by the full model with that one line changed.
    private void Centre(int[] at)
    {
        var choices = search.Grid.Choices(at);
        centre = search.Serve(choices).Sip;
        moved = [.. lines.Select((line, i) => line.Select(p =>
        {
            var sip = search.Serve([.. choices.Select((c, k) => k == i ? p.Choice : c)]).Sip;
            return (sip.VolumeMl - centre.VolumeMl, sip.TemperatureC - centre.TemperatureC);
        }).ToArray())];
    }

    private bool Outwards(double fromMl, double wide, double around, double limit)
    {
        var proven = true;
        for (var (n, any) = (0, true); any; n++)
        {
            any = false;
            foreach (var side in n == 0 ? [0] : new[] { 1, -1 })
            {
                var middle = fromMl * Math.Pow(wide, side * n);
                var (low, high, most) = (middle / Math.Sqrt(wide), middle * Math.Sqrt(wide), best?.Square ?? limit);
                if (n * Math.Log(wide) > around || LeastOfVolume(low, high) >= most) continue;
                any = true;
                proven &= Between(low, high, most);
            }
        }

        return proven;
    }

    private double LeastOfVolume(double lowMl, double highMl)
    {
        var off = Math.Max(0, Math.Max(Math.Log(lowMl / meant.Sip.VolumeMl), Math.Log(meant.Sip.VolumeMl / highMl))) / Jnd.VolumeShare;
        return Moves.VolumeWeight * off * off;
    }

    private bool Between(double lowMl, double highMl, double most)
    {
        var (model, costs, sip) = (new CpModel(), LinearExpr.NewBuilder(), meant.Sip);
        var middle = Math.Sqrt(lowMl * highMl);
        BoolVar[][] takes = [.. lines.Select(l => l.Select(_ => model.NewBoolVar("")).ToArray())];
        foreach (var line in takes) model.AddExactlyOne(line);
        model.AddLinearConstraint(Sum(takes, (i, c) => moved[i][c].Ml, PerMl, centre.VolumeMl), (long)Math.Ceiling(lowMl * PerMl), (long)Math.Floor(highMl * PerMl));
        Share(model, takes);

        // A convex cost: what is counted differs from what was meant by d, and the cost is nowhere below a tangent.
        void Cost(Func<int, int, double> of, double scale, double from, double asMeant, double perJnd, double weight, Func<double, double> d)
        {
            var argument = model.NewIntVar(-2_000_000_000, 2_000_000_000, "");
            model.Add(argument == Sum(takes, of, scale, from));
            var cost = model.NewIntVar(0, (long)(most * PerSquare), "");
            for (var jnd = 0.02; jnd < Math.Sqrt(most / weight); jnd *= 1.3)
            {
                foreach (var x in new[] { asMeant - jnd * perJnd, asMeant + jnd * perJnd })
                {
                    double Square(double y) => weight * d(y) * d(y);
                    var h = 1e-3 * perJnd;
                    var slope = (Square(x + h) - Square(x - h)) / (2 * h);
                    model.Add((long)PerSlope * cost >= (long)Math.Round(slope / scale * PerSquare * PerSlope) * argument + (long)Math.Round((Square(x) - slope * x) * PerSquare * PerSlope));
                }
            }

            costs.Add(cost);
        }

        // The grams that make the same level at the middle volume, to first order in the volume.
        void Taste(Func<Totals, double> grams, JndScale scale, double level, double times)
        {
            var per = level / times;
            if (level <= 0 && lines.All(l => l.All(p => grams(p.Totals) <= 0))) return;
            Cost((i, c) => grams(lines[i][c].Totals) - per * moved[i][c].Ml, PerGram, per * (middle - centre.VolumeMl), per * middle, middle / times / scale.Slope(level), 1,
                g => scale.Count(Math.Max(0, g) * times / middle) - scale.Count(level));
        }

        Cost((i, c) => moved[i][c].Ml, PerMl, centre.VolumeMl, sip.VolumeMl, Jnd.VolumeShare * sip.VolumeMl, Moves.VolumeWeight, ml => Jnd.OfVolume(ml) - Jnd.OfVolume(sip.VolumeMl));
        Cost((i, c) => moved[i][c].Celsius, PerCelsius, centre.TemperatureC, sip.TemperatureC, Jnd.Degrees, Moves.TemperatureWeight, t => Jnd.OfTemperature(t - sip.TemperatureC));
        Taste(t => t.Sweet, Jnd.Sugar, sip.SweetnessGPerL, Meant.PerGram);
        Taste(t => t.Acid, Jnd.Acid, sip.AcidGPerL, Meant.PerGram);
        Taste(t => t.Ethanol, Jnd.Strength, sip.StrengthPercent, Meant.PercentPerGram);
        costs.Add(Sum(takes, (i, c) => search.Slots[i].Cost(lines[i][c].Choice.Option, lines[i][c].Choice.Mark.Millilitres, middle).Square, PerSquare, 0));
        model.Add(costs <= (long)(most * PerSquare));
        model.Minimize(costs);

        var solver = new CpSolver { StringParameters = FormattableString.Invariant($"num_workers:1,random_seed:1,max_deterministic_time:{Effort}") };
        var status = solver.Solve(model);
        if (status is CpSolverStatus.Optimal or CpSolverStatus.Feasible)
            best = ([.. takes.Select(l => Array.FindIndex(l, solver.BooleanValue))], solver.ObjectiveValue / PerSquare);
        return status is CpSolverStatus.Optimal or CpSolverStatus.Infeasible;
    }

    private static LinearExprBuilder Sum(BoolVar[][] takes, Func<int, int, double> of, double scale, double from)
    {
        var sum = LinearExpr.NewBuilder();
        for (var i = 0; i < takes.Length; i++)
        {
            for (var c = 0; c < takes[i].Length; c++) sum.AddTerm(takes[i][c], (long)Math.Round(of(i, c) * scale));
        }

        sum.Add((long)Math.Round(from * scale));
        return sum;
    }

    // What is left of a bottle that several lines may take goes round.
    private void Share(CpModel model, BoolVar[][] takes)
    {
        if (!search.Grid.Shares) return;
        foreach (var bottle in lines.SelectMany((l, i) => l.Select((p, c) => (p.Choice, Takes: takes[i][c]))).GroupBy(p => p.Choice.Option.Item.Name))
        {
            var poured = LinearExpr.NewBuilder();
            foreach (var (choice, yes) in bottle) poured.AddTerm(yes, (long)Math.Floor(choice.Mark.Millilitres * PerMl));
            model.Add(poured <= (long)Math.Ceiling(Math.Min(1e6, bottle.First().Choice.Option.Item.LeftMl) * PerMl));
        }
    }
}

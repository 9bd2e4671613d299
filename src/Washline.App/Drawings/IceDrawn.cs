using Washline.Drinks;

namespace Washline.App.Drawings;

/// <summary>Ice as it lies in a glass: how many pieces, where they float, about a twelfth of it above the drink.</summary>
/// <remarks>The amount and the share above the surface are computed (ice has 0.917 of the density of water); which piece lies where is drawn, always the same way.</remarks>
public static class IceDrawn
{
    private const double MlPerG = 1 / 0.917;
    private const double Above = 0.083; // share of floating ice above the surface, 1 − 0.917
    private const double CubeMm = 32;
    private const double CrushedMm = 8;
    private const double Loose = 0.54; // share of a heap of crushed ice that is ice; judgement

    /// <summary>The pieces, those at the back first, each a closed shape in mm as in <see cref="Point"/>.</summary>
    public static IReadOnlyList<IReadOnlyList<Point>> Pieces(WashLine wash, ServedIce ice)
    {
        if (wash.IceG <= 1) return [];
        return ice switch
        {
            ServedIce.LargeCube => [Cube(0, Surface(wash) + Cube1(wash) * (0.5 - Above), Cube1(wash), 7)],
            ServedIce.Crushed => Crushed(wash),
            _ => Cubes(wash),
        };
    }

    /// <summary>The cloud in the middle of a home-made cube, where the air of the water has been frozen in: the cube itself, drawn smaller.</summary>
    public static IReadOnlyList<Point> Cloud(IReadOnlyList<Point> cube)
    {
        var (x, y) = (cube.Average(p => p.X), cube.Average(p => p.Y));
        return [.. cube.Select(p => new Point(x + (p.X - x) * 0.5, y + (p.Y - y) * 0.5))];
    }

    private static double Surface(WashLine wash) => wash.Glass.DepthMm - wash.LevelMm;

    private static double Cube1(WashLine wash) => Math.Min(Math.Cbrt(wash.IceG * MlPerG * 1000), wash.Glass.RimMm * 0.66);

    private static List<IReadOnlyList<Point>> Cubes(WashLine wash)
    {
        var glass = wash.Glass;
        var whole = wash.IceG * MlPerG * 1000;
        var count = Math.Max(1, (int)Math.Round(whole / Math.Pow(CubeMm, 3)));
        var edge = Math.Cbrt(whole / count);
        var across = Math.Max(1, (int)(glass.RimMm * 0.98 / edge));
        var row = across > 1 ? across * 2 - 1 : 1; // one stands behind the gap of two
        var top = Surface(wash) - edge * Above * Math.Min(2.2, (double)count / row);
        var pieces = new List<IReadOnlyList<Point>>();
        for (var i = 0; i < count; i++)
        {
            var (layer, place) = (i / row, i % row);
            var inFront = place < across;
            var centre = top + edge * (0.5 + layer * 1.03) + (inFront ? 0 : edge * 0.16) + Chance(i, 3) * 1.6;
            var room = glass.RadiusMm(Math.Clamp(glass.DepthMm - centre - edge * 0.3, 0, glass.DepthMm)) - edge * 0.58;
            var share = across == 1 ? Chance(i, 1) * 0.8 : inFront ? 2.0 * place / (across - 1) - 1 : Chance(i, 2) * 0.3;
            var piece = Cube(Math.Max(0, room) * share, centre, edge, Chance(i, 5) * (across == 1 ? 16 : 9));
            if (inFront) pieces.Add(piece);
            else pieces.Insert(0, piece);
        }

        return pieces;
    }

    private static List<IReadOnlyList<Point>> Crushed(WashLine wash)
    {
        var glass = wash.Glass;
        var heap = wash.IceG * MlPerG / Loose;
        // A heap that reaches the bottom stands out of the drink; one that floats shows a twelfth.
        var top = Math.Max(Math.Min(glass.DepthMm + 7, glass.LevelMm(heap) + Math.Max(0, heap - glass.CapacityMl) / 4), wash.LevelMm + Above * glass.LevelMm(heap));
        var bottom = Math.Max(0, heap >= glass.MillilitresTo(top) ? 0 : glass.LevelMm(glass.MillilitresTo(top) - heap));
        var pieces = new List<IReadOnlyList<Point>>();
        var n = 0;
        for (var (h, row) = (bottom + CrushedMm * 0.4, 0); h <= top; h += CrushedMm * 0.8, row++)
        {
            var inside = glass.RadiusMm(Math.Clamp(h, 0, glass.DepthMm)) - CrushedMm * 0.42;
            if (h > glass.DepthMm - 3) inside *= Math.Sqrt(Math.Max(0.1, 1 - (h - glass.DepthMm + 3) / 14));
            var count = Math.Max(1, (int)Math.Round(2 * inside / (CrushedMm * 0.92)));
            for (var i = 0; i < count; i++, n++)
            {
                var x = count == 1 ? 0 : -inside + 2 * inside * (i + (row % 2 == 0 ? 0.25 : 0.75) - 0.25) / (count - 0.5);
                pieces.Add(Chip(Math.Clamp(x + Chance(n, 1), -inside, inside), glass.DepthMm - h + Chance(n, 2) * 1.2, CrushedMm * (0.48 + 0.09 * Chance(n, 4)), n));
            }
        }

        return pieces;
    }

    private static List<Point> Cube(double x, double y, double edge, double degrees)
    {
        var (sin, cos) = Math.SinCos(degrees * Math.PI / 180);
        // Corners melt first: each is cut by a tenth of the edge.
        double half = edge / 2, cut = half * 0.8;
        (double X, double Y)[] corners = [(-cut, -half), (cut, -half), (half, -cut), (half, cut), (cut, half), (-cut, half), (-half, cut), (-half, -cut)];
        return [.. corners.Select(c => new Point(x + c.X * cos - c.Y * sin, y + c.X * sin + c.Y * cos))];
    }

    private static List<Point> Chip(double x, double y, double radius, int n)
    {
        var sides = 5 + (n * 7 % 3);
        return [.. Enumerable.Range(0, sides).Select(i =>
        {
            var (sin, cos) = Math.SinCos(2 * Math.PI * (i + 0.3 * Chance(n, 10 + i)) / sides + n);
            var r = radius * (1 + 0.22 * Chance(n, 20 + i));
            return new Point(x + r * cos, y + r * sin);
        })];
    }

    // From −1 to 1, the same every time for the same piece.
    private static double Chance(int piece, int about)
    {
        var mixed = unchecked((uint)(piece * 73_856_093 ^ (about + 1) * 19_349_663));
        mixed = unchecked((mixed ^ mixed >> 13) * 1_274_126_177);
        return (mixed >> 8) / (double)(1 << 23) - 1;
    }
}

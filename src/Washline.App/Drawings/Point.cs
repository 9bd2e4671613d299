namespace Washline.App.Drawings;

/// <summary>A point of a drawing in mm: x from the centre line to the right, y down from the rim.</summary>
/// <param name="X">mm.</param>
/// <param name="Y">mm.</param>
public readonly record struct Point(double X, double Y)
{
    /// <summary>The list of points as an SVG path or polygon takes it, to a hundredth of a millimetre.</summary>
    public static string Text(IEnumerable<Point> points) => string.Join(' ', points.Select(p => p.ToString()));

    /// <inheritdoc/>
    public override string ToString() => FormattableString.Invariant($"{X:0.##},{Y:0.##}");
}

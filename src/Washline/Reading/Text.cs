using System.Globalization;

namespace Washline.Reading;

/// <summary>Numbers as they are written back.</summary>
internal static class Text
{
    /// <summary>The shortest figures that read back as that number, without powers of ten.</summary>
    public static string Number(double value)
    {
        var shortest = value.ToString("R", CultureInfo.InvariantCulture);
        return shortest.Contains('E', StringComparison.Ordinal) && Math.Abs(value) < 1e15 ? ((decimal)value).ToString("0.############################", CultureInfo.InvariantCulture) : shortest;
    }
}

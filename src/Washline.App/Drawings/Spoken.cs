namespace Washline.App.Drawings;

/// <summary>Numbers as they stand on the page.</summary>
public static class Spoken
{
    /// <summary>A signed number to a tenth with a true minus; <c>0</c> without a sign.</summary>
    public static string Signed(double value) => Math.Abs(value) < 0.05 ? "0" : FormattableString.Invariant($"{(value > 0 ? "+" : "−")}{Math.Abs(value):0.0}");

    /// <summary>A number with a true minus.</summary>
    /// <param name="value">The number.</param>
    /// <param name="format">How many digits.</param>
    public static string Number(double value, string format = "0")
    {
        var text = Math.Abs(value).ToString(format, System.Globalization.CultureInfo.InvariantCulture);
        return value < 0 && text.Any(c => c is > '0' and <= '9') ? "−" + text : text;
    }

    /// <summary>From the least to the most: <c>16.6 to 18.3</c>.</summary>
    public static string Range(double low, double high, string format = "0") => $"{Number(low, format)} to {Number(high, format)}";
}

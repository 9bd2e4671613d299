using System.Globalization;

namespace Washline.App.Pages;

/// <summary>The address of a bench: which spec, and what is poured for it.</summary>
public static class BenchAddress
{
    /// <summary>The bench as it opens, or with one of the named pours: straight, closest, simplest, kept.</summary>
    public static string Of(string title, string named = "") => $"/spec/{(NeedsMark(title) ? "~" : "")}{Uri.EscapeDataString(title)}{(named.Length > 0 ? "?as=" + named : "")}";

    /// <summary>The bench with those pours, one parameter a line: <c>?pour=limes~22.5</c>.</summary>
    public static string Of(string title, IEnumerable<(string Bottle, double Millilitres)> pours) =>
        $"{Of(title)}?{string.Join('&', pours.Select(p => "pour=" + Uri.EscapeDataString(Pour(p.Bottle, p.Millilitres)).Replace("%20", "+", StringComparison.Ordinal)))}";

    /// <summary>The title in an address, as it comes from the server: that leaves a slash, as in <c>50/50</c>, written <c>%2F</c>.</summary>
    public static string Title(string inAddress) => (inAddress.StartsWith('~') ? inAddress[1..] : inAddress).Replace("%2F", "/", StringComparison.OrdinalIgnoreCase);

    // A browser takes `.` and `..` for a way up, however they are written: a mark stands before them, and before what begins with the mark.
    private static bool NeedsMark(string title) => title is "." or ".." || title.StartsWith('~');

    /// <summary>A bottle with an amount: <c>limes~22.5</c>.</summary>
    public static string Pour(string bottle, double ml) => FormattableString.Invariant($"{bottle}~{ml:0.##}");

    /// <summary>Reads <see cref="Pour"/> back; what is no amount, or none that goes into a drink, is nothing.</summary>
    public static (string Bottle, double Millilitres)? Read(string pour)
    {
        var mark = pour.LastIndexOf('~');
        return mark >= 0 && double.TryParse(pour.AsSpan(mark + 1), NumberStyles.Float, CultureInfo.InvariantCulture, out var ml) && ml is >= 0 and <= 5000
            ? (pour[..mark], ml)
            : null;
    }
}

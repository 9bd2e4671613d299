namespace Washline.App.Commands;

/// <summary>What came of reading many files.</summary>
/// <param name="Files">Files read.</param>
/// <param name="PassedOver">Files that are no text, too large, or lead elsewhere.</param>
/// <param name="Specs">Specs found in them.</param>
/// <param name="Lines">Ingredient lines of those.</param>
/// <param name="Problems">Problems told.</param>
internal sealed record ManyCount(int Files, int PassedOver, int Specs, int Lines, int Problems)
{
    /// <summary>As a sentence.</summary>
    public string Words => $"{Some(Files, "file")} read{(PassedOver > 0 ? $", {PassedOver} passed over" : "")}: {Some(Specs, "spec")}, {Some(Lines, "line")}, {Some(Problems, "problem")}.";

    private static string Some(int count, string what) => FormattableString.Invariant($"{count} {what}{(count == 1 ? "" : "s")}");
}

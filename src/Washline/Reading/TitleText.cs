namespace Washline.Reading;

/// <summary>A drink's name as a line of its own.</summary>
internal static class TitleText
{
    /// <summary>The name without the marks that notes put around a heading.</summary>
    public static string Bare(string text) => text.Trim().TrimStart('#').Trim(' ', '*', '_').TrimEnd(':', ' ');

    /// <summary>Whether the name, standing alone on the first line, is read as a name and nothing else.</summary>
    public static bool ReadsPlain(string title) =>
        title.Length > 0 && Bare(title) == title && char.IsLetter(title[0]) && KeyLine.Of(title) is null
        && AmountText.Leading(title, 0) is null && AmountText.Trailing(title, 0, title.Length) is null
        && !title.Contains(',', StringComparison.Ordinal) && !title.Contains('(', StringComparison.Ordinal) && !title.Contains('[', StringComparison.Ordinal);
}

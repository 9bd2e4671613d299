using System.Globalization;
using Washline.Drinks;
using Washline.Reading;

namespace Washline.App.Storage;

/// <summary>One thing at home as words under column names; typed values are asked of it, and what cannot be had becomes a problem.</summary>
/// <param name="what">What it is: <c>bottle</c>, <c>glass</c> …</param>
/// <param name="at">Where it begins.</param>
/// <param name="cells">Its words by column; a column that is missing is empty.</param>
/// <param name="typed">Whether a person typed them, with units: <c>70 cl</c>; else they are bare numbers in the column's unit.</param>
internal sealed class Entry(string what, Cell at, IReadOnlyDictionary<string, Cell> cells, bool typed = false)
{
    private readonly List<Problem> problems = [];

    public string What => what;

    public Cell At => at;

    public IReadOnlyDictionary<string, Cell> Cells => cells;

    public IReadOnlyList<Problem> Problems => problems;

    public string this[string column] => cells.TryGetValue(column, out var cell) ? cell.Text : "";

    public void Bad(string column, string sentence, string todo)
    {
        var cell = cells.TryGetValue(column, out var found) && found.Line > 0 ? found : at;
        problems.Add(new Problem(cell.Line, cell.Column, sentence, todo));
    }

    /// <summary>A word that must be there, trimmed, on one line.</summary>
    public string Needed(string column, string such)
    {
        var text = this[column].Trim();
        if (text.Length == 0) Bad(column, $"The {what} has no {Columns.Word(column)}.", $"Give it one, such as {such}.");
        else if (text.Length > 100 || text.Any(char.IsControl)) Bad(column, $"The {Columns.Word(column)} is longer than 100 letters or has a line break.", $"Write a short one, such as {such}.");
        return text;
    }

    /// <summary>A number in that range; nothing when the cell is empty or the number is a problem.</summary>
    public double? Number(string column, double low, double high, string unit, string such)
    {
        if (Parsed(column, such) is not { } number) return null;
        if (number >= low && number <= high) return number;
        Bad(column, string.Create(CultureInfo.InvariantCulture, $"The {Columns.Word(column)} of {number} {unit} is not from {low} to {high} {unit}."), $"Write it in {unit}, such as {such}.");
        return null;
    }

    /// <summary>A number that must be there.</summary>
    public double NumberNeeded(string column, double low, double high, string unit, string such)
    {
        if (this[column].Trim().Length == 0) Bad(column, $"The {what} has no {Columns.Word(column)}.", $"Give it in {unit}, such as {such}.");
        return Number(column, low, high, unit, such) ?? low;
    }

    /// <summary>A count from 0 to 1 000.</summary>
    public int Count(int usual)
    {
        if (this["count"].Trim() is not { Length: > 0 } text) return usual;
        if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var count) && count <= 1000) return count;
        Bad("count", $"The count '{text}' is not a whole number from 0 to 1000.", "Write how many there are, such as 6.");
        return usual;
    }

    /// <summary>A price of 0 to 1 000 000, and its currency.</summary>
    public (decimal? Price, string Currency) Price()
    {
        var currency = this["currency"].Trim();
        var good = currency.Length == 0 || (currency.Length == 3 && currency.All(char.IsAsciiLetterUpper));
        if (!good) Bad("currency", $"The currency '{currency}' is not three capitals.", "Write its code, such as EUR, GBP or USD.");
        if (this["price"].Trim() is not { Length: > 0 } text) return (null, currency);
        if (!decimal.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var price) || price > 1_000_000)
            Bad("price", $"The price '{text}' is not a number from 0 to 1000000.", "Write it with a point and without the currency, such as 24.50.");
        if (currency.Length == 0) Bad("price", $"The price {text} has no currency.", "Add the currency's code, such as EUR, GBP or USD.");
        return (price, currency);
    }

    /// <summary>A day, or nothing.</summary>
    public DateOnly? Day(string column)
    {
        if (this[column].Trim() is not { Length: > 0 } text) return null;
        if (DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day)) return day;
        Bad(column, $"The {Columns.Word(column)} '{text}' is not a day.", "Write year-month-day, such as 2026-03-14.");
        return null;
    }

    /// <summary>One of a few words.</summary>
    public string OneOf(string column, params string[] words)
    {
        var text = this[column].Trim();
        if (words.FirstOrDefault(w => w.Equals(text, StringComparison.OrdinalIgnoreCase)) is { } word) return word;
        var choice = $"Write one of: {string.Join(", ", words)}.";
        if (text.Length == 0) Bad(column, $"The {what} has no {Columns.Word(column)}.", choice);
        else Bad(column, $"The {Columns.Word(column)} '{text}' is not known.", choice);
        return words[0];
    }

    /// <summary>The kind that its words name.</summary>
    public Kind? Kind()
    {
        var words = Needed("kind", "\"rye whisky\"");
        if (words.Length == 0) return null;
        if (Kinds.Catalogue.WithId(words) is { } kind) return kind;
        var match = Kinds.Catalogue.Find(words);
        if (match.Kind is not null) return match.Kind;
        var near = match.DidYouMean.Select(k => $"'{k.Name}'").ToArray();
        Bad("kind", $"The catalogue has no kind '{words}'.", near.Length > 0
            ? $"Did you mean {string.Join(" or ", near)}?"
            : "Write a more common word for it, such as 'rye whisky' or 'orange liqueur'.");
        return null;
    }

    private double? Parsed(string column, string such)
    {
        if (this[column].Trim() is not { Length: > 0 } text) return null;
        if (typed) return Typed(column, text);
        if (double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number)) return number;
        Bad(column, $"The {Columns.Word(column)} '{text}' is not a number.", $"Write digits with a point, such as {such}.");
        return null;
    }

    private double? Typed(string column, string text)
    {
        if (Quantity.Of(column, text) is { } quantity) return quantity;
        Bad(column, $"The {Columns.Word(column)} '{text}' could not be read.", $"Write it such as {Quantity.Such(column)}.");
        return null;
    }
}

namespace Washline.Reading.Data;

/// <summary>Reads JSON with the place of every value. Where it breaks off, what stood before is kept.</summary>
/// <remarks>Pages hold much JSON with line breaks inside strings and commas too many; both are read as meant. Everything else that is not JSON is where it breaks off.</remarks>
/// <param name="source">The text.</param>
/// <param name="end">Where the JSON ends in it at the latest.</param>
internal sealed class JsonText(string source, int end)
{
    private const int Deepest = 64;
    private const int MostValues = 400_000;
    private int at;
    private int values;

    /// <summary>Where it breaks off, and why; nothing when all of it was read.</summary>
    public (int At, string What)? Broken { get; private set; }

    /// <summary>Every object and array that stands by itself from that place on.</summary>
    public List<JsonPart> Read(int start)
    {
        var parts = new List<JsonPart>();
        at = start;
        while (Broken is null)
        {
            while (at < end && source[at] is not ('{' or '[')) at++;
            if (at >= end) break;
            if (Value(0) is { } part) parts.Add(part);
        }

        return parts;
    }

    private JsonPart? Value(int depth)
    {
        Skip();
        if (at >= end) return Break(at, "ends before it is complete");
        if (++values > MostValues) return Break(at, $"holds more than {MostValues} values");
        return source[at] switch
        {
            '{' or '[' when depth >= Deepest => Break(at, $"is nested more than {Deepest} deep"),
            '{' => Object(depth),
            '[' => Array(depth),
            '"' => String(),
            _ => Bare(),
        };
    }

    private JsonPart Object(int depth)
    {
        var part = new JsonPart(at++) { Members = [] };
        while (More('}'))
        {
            if (source[at] != '"')
            {
                Break(at, "has no name in quotation marks");
                break;
            }

            if (String() is not { } name) break;
            Skip();
            if (at >= end || source[at] != ':')
            {
                Break(at, "has no colon behind a name");
                break;
            }

            at++;
            if (Value(depth + 1) is not { } value) break;
            part.Members.Add((name, value));
        }

        part.End = at;
        return part;
    }

    private JsonPart Array(int depth)
    {
        var part = new JsonPart(at++) { Items = [] };
        while (More(']'))
        {
            if (Value(depth + 1) is not { } item) break;
            part.Items.Add(item);
        }

        part.End = at;
        return part;
    }

    // Whether another member follows; goes past the comma before it, or past the closing mark.
    private bool More(char close)
    {
        if (Broken is not null) return false;
        Skip();
        while (at < end && source[at] == ',')
        {
            at++;
            Skip();
        }

        if (at >= end)
        {
            Break(at, "ends before it is complete");
            return false;
        }

        if (source[at] != close) return true;
        at++;
        return false;
    }

    private JsonPart? String()
    {
        var start = ++at;
        while (at < end && source[at] != '"') at += source[at] == '\\' ? 2 : 1;
        if (at >= end)
        {
            at = end;
            return Break(start - 1, "has a quotation mark that does not close");
        }

        return new JsonPart(start) { End = at++, IsString = true };
    }

    private JsonPart? Bare()
    {
        var start = at;
        while (at < end && (char.IsAsciiLetterOrDigit(source[at]) || source[at] is '-' or '+' or '.')) at++;
        return at > start ? new JsonPart(start) { End = at } : Break(at, $"has “{source[at]}” where a value is due");
    }

    private void Skip()
    {
        while (at < end && (char.IsWhiteSpace(source[at]) || char.IsControl(source[at]) || source[at] == '\uFEFF')) at++;
    }

    private JsonPart? Break(int place, string what)
    {
        Broken ??= (place, what);
        return null;
    }
}

using System.Globalization;

namespace Washline.Reading.Data;

/// <summary>A value in JSON with its place in the source.</summary>
/// <param name="Start">Where it begins; for a string behind its opening mark.</param>
internal sealed class JsonPart(int Start)
{
    public int Start { get; } = Start;

    /// <summary>Where it ends; for a string before its closing mark.</summary>
    public int End { get; set; }

    public bool IsString { get; init; }

    /// <summary>The members of an object; nothing for anything else.</summary>
    public List<(JsonPart Name, JsonPart Value)>? Members { get; init; }

    /// <summary>The items of an array; nothing for anything else.</summary>
    public List<JsonPart>? Items { get; init; }

    /// <summary>A string with its escapes undone, or a number or word as it stands.</summary>
    public Placed Words(string source)
    {
        if (Members is not null || Items is not null) return Placed.Of(source, Start, Start);
        if (!IsString || source.IndexOf('\\', Start, End - Start) < 0) return Placed.Of(source, Start, End);
        var words = new Placed.Making(Start);
        for (var i = Start; i < End; i++)
        {
            if (source[i] != '\\' || i + 1 >= End)
            {
                words.Add(source[i], i);
                continue;
            }

            var place = i++;
            if (source[i] == 'u' && i + 5 <= End && ushort.TryParse(source.AsSpan(i + 1, 4), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out var code))
            {
                words.Add((char)code, place);
                i += 4;
                continue;
            }

            words.Add(source[i] switch { 'n' => '\n', 'r' => '\r', 't' => '\t', 'b' => ' ', 'f' => ' ', var letter => letter }, place);
        }

        return words.Made(End);
    }

    /// <summary>Whether it is a string of exactly those letters.</summary>
    public bool Is(string source, string words) => IsString && source.AsSpan(Start, End - Start).SequenceEqual(words);
}

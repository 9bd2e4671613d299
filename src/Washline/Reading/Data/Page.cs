using AngleSharp.Html;
using AngleSharp.Html.Parser;
using AngleSharp.Html.Parser.Tokens;
using AngleSharp.Text;

namespace Washline.Reading.Data;

/// <summary>A page of HTML taken apart: where its data stands, and the lines that a person sees. Tags are only told apart; nothing is built, fetched or run.</summary>
internal sealed class Page
{
    private static readonly HashSet<string> Inline = new(StringComparer.Ordinal)
    {
        "a", "abbr", "b", "bdi", "bdo", "cite", "code", "data", "del", "dfn", "em", "font", "i", "ins", "kbd", "label", "mark", "q", "s", "samp", "small", "span",
        "strong", "sub", "sup", "time", "u", "var", "wbr", "td", "th",
    };

    private readonly string source;

    private Page(string source) => this.source = source;

    /// <summary>The stretches of JSON-LD.</summary>
    public List<(int Start, int End)> Data { get; } = [];

    /// <summary>The stretches between tags that a person sees.</summary>
    public List<(int Start, int End)> Seen { get; } = [];

    /// <summary>The lines that a person sees, each with whether it is a heading.</summary>
    public List<(Placed Words, bool IsHeading)> Lines { get; } = [];

    /// <summary>The title of the page; nothing when it has none.</summary>
    public Placed? Title { get; private set; }

    public static Page Of(string source)
    {
        var page = new Page(source);
        page.Read();
        return page;
    }

    private void Read()
    {
        var tokens = new HtmlTokenizer(new TextSource(source), HtmlEntityProvider.Resolver) { IsNotConsumingCharacterReferences = true };
        var line = new List<Placed>();
        var (within, isData, heading) = ("", false, false);
        for (var token = tokens.Get(); token.Type != HtmlTokenType.EndOfFile; token = tokens.Get())
        {
            var start = Math.Clamp(token.Position.Position - 1, 0, source.Length);
            switch (token.Type)
            {
                case HtmlTokenType.StartTag:
                    var tag = (HtmlTagToken)token;
                    tokens.State = Mode(tag.Name) ?? tokens.State;
                    within = Mode(tag.Name) is null ? "" : tag.Name;
                    isData = tag.Name == "script" && tag.GetAttribute("type").Trim().StartsWith("application/ld+json", StringComparison.OrdinalIgnoreCase);
                    Between(tag.Name, line, ref heading);
                    if (IsHeading(tag.Name)) heading = true;
                    break;
                case HtmlTokenType.EndTag:
                    (within, isData) = ("", false);
                    Between(token.Name, line, ref heading);
                    break;
                case HtmlTokenType.Character:
                    var end = Math.Clamp(start + token.Data.Length, start, source.Length);
                    if (isData) Add(start, end);
                    else if (within == "title") Title ??= Placed.Join(" ", [.. PlainWords.Of(Placed.Of(source, start, end)).Lines()]);
                    else if (within.Length == 0 || within == "textarea") See(start, end, line);
                    break;
                default:
                    break;
            }
        }

        Close(line, heading);
    }

    // One script may come in several pieces.
    private void Add(int start, int end)
    {
        if (Data.Count > 0 && Data[^1].End == start) Data[^1] = (Data[^1].Start, end);
        else Data.Add((start, end));
    }

    private void See(int start, int end, List<Placed> line)
    {
        Seen.Add((start, end));
        line.Add(Placed.Of(source, start, end));
    }

    private void Between(string tag, List<Placed> line, ref bool heading)
    {
        if (Inline.Contains(tag)) return;
        Close(line, heading);
        heading = false;
    }

    private void Close(List<Placed> line, bool heading)
    {
        if (line.Count > 0)
        {
            var words = PlainWords.Of(line.Count == 1 ? line[0] : Placed.Join(" ", line));
            foreach (var one in words.Lines()) Lines.Add((one, heading));
        }

        line.Clear();
    }

    private static bool IsHeading(string tag) => tag.Length == 2 && tag[0] == 'h' && tag[1] is >= '1' and <= '6';

    // What stands inside these is not marked up.
    private static HtmlParseMode? Mode(string tag) => tag switch
    {
        "script" => HtmlParseMode.Script,
        "style" or "xmp" or "iframe" or "noembed" or "noframes" => HtmlParseMode.Rawtext,
        "title" or "textarea" => HtmlParseMode.RCData,
        "plaintext" => HtmlParseMode.Plaintext,
        _ => null,
    };
}

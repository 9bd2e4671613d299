using System.Text.RegularExpressions;
using Washline.Drinks;

namespace Washline.Reading;

/// <summary>A line that holds more than one ingredient: <c>2 oz rum, ¾ lime juice, ¾ simple; shake, coupe</c>.</summary>
internal sealed partial class RunOnText(IngredientText ingredients)
{
    private const int Most = 40;
    private const int LongestLead = 2; // parts of a sentence before the first ingredient
    private const int LongestUnknown = 4; // words
    private const int LongestName = 60; // letters of an ingredient with the amount behind it

    /// <summary>The line in stretches, one for every ingredient, and for the words before and behind them.</summary>
    /// <returns>Nothing when it is not several ingredients.</returns>
    public List<SourceLine>? Split(SourceLine line, int at)
    {
        if (line.Stretch is not null || line.Places is not null || line.Text.Length > SourceLine.Longest) return null;
        var masked = BracketText.Of(line.Text, at).Masked;
        var start = Named().Match(masked, at) is { Success: true } named && named.Length < 50 ? at + named.Length : at;
        if (!masked.AsSpan(start).ContainsAnyInRange('0', '9') && NumberAhead().Count(masked) < 2) return null;
        return ByMarks(line, masked, at, start) ?? ByAmounts(line, masked, at, start) ?? ByClauses(line, masked, at, start);
    }

    // Parted by commas and the like: every part that reads as an ingredient stands alone, the others belong to the one before.
    private List<SourceLine>? ByMarks(SourceLine line, string masked, int at, int start)
    {
        var cuts = Marks().Matches(masked, start).Select(m => m.Index + m.Length).Prepend(start).Append(masked.Length).ToList();
        if (cuts.Count is < 3 or > Most) return null;
        var tail = Tail(masked, start);
        var starts = new List<int>();
        var ends = new List<int>();
        for (var i = 0; i + 1 < cuts.Count && cuts[i] < tail; i++)
        {
            var to = Math.Min(cuts[i + 1], tail);
            if (Behind(line, cuts[i], to) is { } behind)
            {
                starts.Add(Math.Max(cuts[i], behind));
                ends.Add(to);
            }
            else if (Reads(line, cuts[i], to) || starts.Count > 0 && Measures(line, cuts[i], to)) starts.Add(cuts[i]);
            else if (starts.Count == 0 && i <= LongestLead && Within(line, masked, cuts[i], to) is { } inside) starts.Add(inside);
            else if (starts.Count == 0 && i > LongestLead) return null;
            if (ends.Count < starts.Count) ends.Add(int.MaxValue);
        }

        if (starts.Count < 2 || Or().IsMatch(masked[starts[0]..tail])) return null;
        return Stretches(line, at, starts, tail, ends);
    }

    // `of apple brandy two ounces`: the amount stands behind a name that is known word for word; where it begins.
    private int? Behind(SourceLine line, int from, int to)
    {
        if (to - from > LongestName) from = to - LongestName;
        for (var i = from; i < to; i++)
        {
            if (i > from && line.Text[i - 1] != ' ' || !char.IsLetter(line.Text[i])) continue;
            if (ingredients.Read(line.Of(i, to), i) is { Line.Kind: not null } read && (read.Problems.Count == 0 || read.Amount.Unit is null) && read.Amount.Start > i && read.Amount.NumberEnd > read.Amount.Start && ingredients.IsWhole(read.Line.Ingredient)) return i;
        }

        return null;
    }

    // Without marks: an amount with a unit begins the next ingredient.
    private List<SourceLine>? ByAmounts(SourceLine line, string masked, int at, int start)
    {
        var starts = new List<int>();
        var tail = masked.Length;
        for (var i = start; i < masked.Length && starts.Count < Most; i++)
        {
            if (i > start && masked[i - 1] is not (' ' or ',' or ';' or '/' or '+' or '(')) continue;
            if (TopUp().IsMatch(masked, i) && Tops(line, masked, i))
            {
                starts.Add(i);
                continue;
            }

            if (!(char.IsNumber(masked[i]) || i + 1 < masked.Length && masked[i] == '.' && char.IsAsciiDigit(masked[i + 1]) || Spoken().IsMatch(masked, i))) continue;
            if (AmountText.Leading(masked, i) is not { } amount) continue;
            if (amount.Unit is { Kind: UnitKind.TopUp or UnitKind.Unsaid } or { Name: "float" } || amount.Unit is null && !Counts(line, masked, i)) continue;
            starts.Add(i);
            i = amount.End;
        }

        if (starts.Count < 2) return null;
        tail = Tail(masked, starts[^1]);
        var ends = starts.Select((s, i) => i + 1 < starts.Count ? Math.Min(starts[i + 1], SentenceEnd(masked, s)) : tail).ToList();
        var read = Enumerable.Range(0, starts.Count).Count(i => Reads(line, starts[i], ends[i]));
        return read == starts.Count || read >= 3 && read >= starts.Count - 1 ? Stretches(line, at, starts, tail, ends) : null;
    }

    // `Take 50 ml of gin and put it in the shaker. Add 25 ml of lemon juice`: what is between is the method.
    private List<SourceLine>? ByClauses(SourceLine line, string masked, int at, int start)
    {
        if (!MethodText.Starts(masked[start..]) && !MethodText.Holds(masked[start..])) return null;
        var (starts, ends) = (new List<int>(), new List<int>());
        for (var i = start; i < masked.Length && starts.Count < Most; i++)
        {
            if (i > start && masked[i - 1] is not (' ' or '(') || !(char.IsNumber(masked[i]) || masked[i] == '.' || Spoken().IsMatch(masked, i))) continue;
            if (AmountText.Leading(masked, i) is not { Unit: { Kind: not (UnitKind.TopUp or UnitKind.Unsaid) } } amount) continue;
            var end = Clause().Match(masked, Math.Min(masked.Length, amount.End + 1)) is { Success: true } clause ? clause.Index : masked.Length;
            if (ingredients.Read(line.Of(i, end), i) is not { Line: { Kind: not null } read, Problems.Count: 0 } || !ingredients.IsWhole(read.Ingredient)) continue;
            starts.Add(i);
            ends.Add(end);
            i = end - 1;
        }

        if (starts.Count < 2 && !(starts.Count == 1 && MethodText.Starts(masked[start..]) && starts[0] > start)) return null;
        var stretches = Stretches(line, at, starts, masked.Length, ends);
        return [.. stretches.Select(s => starts.Contains(s.Stretch!.Value.From) || s.Stretch.Value.From < starts[0] && !MethodText.Starts(s.Text.Trim()) && !Alone().IsMatch(s.Text) ? s : s with { As = Key.Method })];
    }

    // `6 basil leaves`: a number alone counts where it stands before what is counted.
    private bool Counts(SourceLine line, string masked, int at)
    {
        var end = Marks().Match(masked, at) is { Success: true } mark ? mark.Index : masked.Length;
        return end - at <= 60 && ingredients.Read(line.Of(at, end), at) is { Line: { Kind: not null, Amount.Unit.Kind: UnitKind.Piece }, Problems.Count: 0 };
    }

    // `top it up with soda water`
    private bool Tops(SourceLine line, string masked, int at)
    {
        var end = Marks().Matches(masked, at).Select(m => m.Index).Append(masked.Length).FirstOrDefault(e => masked[at..e].Contains("with", StringComparison.OrdinalIgnoreCase), masked.Length);
        if (NextSentence().Match(masked, at) is { Success: true } next) end = Math.Min(end, next.Index);
        return ingredients.Read(line.Of(at, end), at) is { Line: { Kind: not null, Amount.Unit.Kind: UnitKind.TopUp } top } && ingredients.IsWhole(top.Ingredient);
    }

    private static int SentenceEnd(string masked, int from) => NextSentence().Match(masked, from) is { Success: true } next ? next.Index + next.Length : masked.Length;

    private static List<SourceLine> Stretches(SourceLine line, int at, List<int> starts, int tail, List<int> ends)
    {
        var stretches = new List<SourceLine>();
        void Add(int from, int to)
        {
            if (line.Text[from..to].Any(c => c is not (' ' or ',' or ';' or '.' or ':' or '/' or '+' or '&' or '|' or '·' or '•')) || stretches.Count == 0) stretches.Add(line.Of(from, to));
            else stretches[^1] = line.Of(stretches[^1].Stretch!.Value.From, to);
        }

        if (starts[0] > at) Add(0, starts[0]);
        for (var i = 0; i < starts.Count; i++)
        {
            var next = i + 1 < starts.Count ? starts[i + 1] : tail;
            var end = Math.Min(next, ends[i]);
            Add(i == 0 && starts[0] == at ? 0 : starts[i], end);
            if (end < next) Add(end, next);
        }

        if (tail < line.Text.Length) Add(tail, line.Text.Length);
        return stretches;
    }

    // `Take 45 ml of gin`: words before the first amount.
    private int? Within(SourceLine line, string masked, int from, int to)
    {
        for (var i = from + 1; i < to; i++)
        {
            if (masked[i - 1] == ' ' && (char.IsNumber(masked[i]) || Spoken().IsMatch(masked, i)) && Reads(line, i, to)) return i;
        }

        return null;
    }

    // Whether the stretch is one ingredient of a known kind with an amount.
    private bool Reads(SourceLine line, int from, int to)
    {
        var stretch = line.Of(from, to);
        return ingredients.Read(stretch, from) is { Line.Kind: not null } read && !read.Problems.Any(p => p.What.Contains("second amount", StringComparison.Ordinal));
    }

    // Whether it is a measure of something that the catalogue does not have: `a teaspoonful of apple jelly`.
    private bool Measures(SourceLine line, int from, int to) =>
        ingredients.Read(line.Of(from, to), from) is { Line: { Kind: null, Amount.Unit.Kind: UnitKind.Poured or UnitKind.Spooned, Note.Length: 0 } unknown } read
        && read.Amount.Start <= from + 1 && read.Amount.NumberEnd > read.Amount.Start && TalkText.Words(unknown.Ingredient) <= LongestUnknown;

    // Where the ingredients end and the method begins.
    private static int Tail(string masked, int from) => Method().Match(masked, from) is { Success: true } tail ? tail.Index : masked.Length;

    [GeneratedRegex(@"^\s*(?:take|put|add|pour|use|measure|start\s+with|begin\s+with|squeeze)\s*$", RegexOptions.IgnoreCase)]
    private static partial Regex Alone();

    [GeneratedRegex(@"\s+(?:and|then|in|into|to|with|over|until|plus|onto|on|for|from|along|together)\b|[.,;:(!](?!\d)", RegexOptions.IgnoreCase)]
    private static partial Regex Clause();

    [GeneratedRegex(@"\G(?:top|fill)(?:ped|ed)?\b", RegexOptions.IgnoreCase)]
    private static partial Regex TopUp();

    [GeneratedRegex(@"(?<=\p{Ll})[.;]\s+(?=\p{Lu})")]
    private static partial Regex NextSentence();

    [GeneratedRegex(@"\G[^:\d]{2,48}?(?::|\s[–—-])\s+(?=\S)")]
    private static partial Regex Named();

    [GeneratedRegex(@"(?:,(?!\d)|;|\s[/+&|·•]\s|\s(?:and(?!\s+(?:a|three)[\s-](?:half|quarters?)\b)|plus|(?<!\b(?:top|topped|fill|filled|finish|finished)(?:\s+it)?(?:\s+(?:up|off))?\s)with)\s|\.\s+(?=\d))\s*", RegexOptions.IgnoreCase)]
    private static partial Regex Marks();

    [GeneratedRegex(@"\b(?:one|two|three|four|half|quarter|dash|dashes|equal)\b", RegexOptions.IgnoreCase)]
    private static partial Regex NumberAhead();

    [GeneratedRegex(@"\G(?:one|two|three|four|five|six|half|quarter|an?\s+(?:half|quarter|third|scant|generous|dash|bar\s?spoon|splash|pinch|couple|few|handful|tea\s?spoon|table\s?spoon|spoon|drop|jigger|shot|pony|part|cup)\w*|dash|pinch|splash|barspoon|an\s+ounce)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Spoken();

    [GeneratedRegex(@"\sor\s+(?:\d|[½¼¾⅓⅔]|one|two|half)", RegexOptions.IgnoreCase)]
    private static partial Regex Or();

    [GeneratedRegex(@"(?<![\p{L}\d])(?:(?:then|and|all|hard|dry|reverse|double|everything|the whole lot)\s+)*(?:put\s+(?:them|it|all)|add\s+(?:\w+\s+of\s+)?ice|shak(?:e|en)|stir(?:red)?|strain(?:ed)?|build|built|swizzled?|blend(?:ed)?(?!\s+(?:scotch|whisk))|muddle|serve[ds]?|(?<!\b(?:for|to|as)\s+(?:a\s+|the\s+)?)garnish(?:ed)?|over\s+(?:crushed\s+|pebble\s+|fresh\s+|a\s+(?:large|big)\s+)?(?:ice|rocks|cube)|with\s+(?:crushed\s+|lots\s+of\s+)?ice|on\s+the\s+rocks|in(?:to)?\s+an?\s|throw[n]?)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Method();
}

using System.Diagnostics;
using System.Globalization;
using Washline.Drinks;
using Washline.Reading;

namespace Washline.Tests.Reading;

/// <summary>Many texts through one reader: whether it throws, hangs, or drops a word.</summary>
internal sealed class FuzzRun(TextForm form, int seed, long count, TimeSpan time)
{
    /// <summary>A text of at most 1500 letters that takes longer than this hangs; a reader needs about a millisecond.</summary>
    private static readonly TimeSpan Hang = TimeSpan.FromSeconds(20);

    private readonly Dictionary<string, (int Seed, string Text, long Times)> breaches = new(StringComparer.Ordinal);
    private readonly Stopwatch watch = Stopwatch.StartNew();
    private readonly Lock door = new();
    private long done;
    private long since;
    private string now = "";

    /// <summary>How many texts were read.</summary>
    public long Done => Interlocked.Read(ref done);

    public int Different => breaches.Count;

    /// <summary>What came of it, a breach a line.</summary>
    public string Report => string.Create(CultureInfo.InvariantCulture, $"{form}: {Done} texts from seed {seed} in {watch.Elapsed.TotalSeconds:0} s; {breaches.Count} kinds of breach")
        + string.Concat(breaches.Select(b => string.Create(CultureInfo.InvariantCulture, $"\n  {b.Value.Times} × {b.Key}\n    seed {b.Value.Seed}: {Shown(b.Value.Text)}")));

    public void Run()
    {
        var corpus = Corpus(form);
        var reading = new Thread(() => Read(corpus), 16 << 20) { IsBackground = true };
        reading.Start();
        while (!reading.Join(500))
        {
            var (at, text) = (Interlocked.Read(ref since), Volatile.Read(ref now));
            if (watch.ElapsedMilliseconds - at <= Hang.TotalMilliseconds || at == 0) continue;
            Breach($"hangs for more than {Hang.TotalSeconds} s", seed + (int)Done, text);
            break;
        }

        watch.Stop();
    }

    // Whole texts to bend: our corpus in the form of that name, and the demo's specs.
    private static List<string> Corpus(TextForm form)
    {
        var folder = form switch { TextForm.RecipeData => "data", TextForm.Spoken or TextForm.Captions => "spoken", _ => "written" };
        var ours = House.Path("tests", "Washline.Tests", "Corpus", "ours", folder);
        var files = Directory.Exists(ours) ? Directory.EnumerateFiles(ours).Where(f => !f.EndsWith(".expected", StringComparison.Ordinal)) : [];
        return [.. files.Concat(Directory.EnumerateFiles(House.Path("src", "Washline.App", "Demo", "specs"))).Order(StringComparer.Ordinal).Select(File.ReadAllText)];
    }

    private void Read(List<string> corpus)
    {
        for (var i = 0L; i < count && watch.Elapsed < time && Different < 20; i++)
        {
            var at = unchecked(seed + (int)i);
            var text = FuzzInput.Of(form, at, corpus);
            Volatile.Write(ref now, text);
            Interlocked.Exchange(ref since, watch.ElapsedMilliseconds + 1);
            try
            {
                if (Dropped(text, Draft.TakeIn(text, Kinds.Catalogue, form)) is { } dropped) Breach(dropped, at, text);
            }
            catch (Exception e)
            {
                Breach($"{e.GetType().Name} {e.Message[..Math.Min(80, e.Message.Length)].ReplaceLineEndings(" ")} {Where(e)}", at, text);
            }

            Interlocked.Increment(ref done);
        }
    }

    /// <summary>What a draft owes its text and does not give; nothing when it gives all.</summary>
    public static string? Dropped(string text, Draft draft)
    {
        var lines = text.TrimStart('\uFEFF').Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n').Split('\n');
        var entries = draft.Account.ToLookup(a => a.Line);
        for (var line = 1; line <= lines.Length; line++)
        {
            if (Letters(lines[line - 1]) != Letters(string.Concat(entries[line].OrderBy(a => a.Column).Select(a => a.Text)))) return "an account that does not hold every word once";
        }

        if (draft.Account.Any(a => a.Line < 1 || a.Line > lines.Length)) return "an account of a line that is not there";
        if (draft.Problems.Any(p => p.Line < 1 || p.Line > lines.Length || p.Column < 1 || p.Column > lines[p.Line - 1].Length + 1)) return "a problem outside the text";
        if (draft.Problems.Any(p => p.What.Length == 0 || p.Try.Length == 0)) return "a problem without a sentence";
        if (draft.Origins.Count != 0 && draft.Origins.Count != draft.Specs.Count) return "origins of other specs than there are";
        if (draft.Origins.SelectMany(o => o).Any(o => o.Line < 1 || o.Line > lines.Length)) return "an origin outside the text";
        return draft.Specs.SelectMany(s => s.Lines).Any(l => double.IsNaN(l.Amount.Low) || l.Amount.Low < 0 || l.Amount.High < l.Amount.Low) ? "an amount that is none" : null;
    }

    private static string Letters(string text) => string.Concat(text.Where(char.IsLetterOrDigit));

    private void Breach(string what, int at, string text)
    {
        lock (door)
        {
            breaches[what] = breaches.TryGetValue(what, out var known) ? (known.Text.Length <= text.Length ? known : (at, text, 0)) with { Times = known.Times + 1 } : (at, text, 1);
        }
    }

    private static string Where(Exception e) => (e.StackTrace ?? "").Split('\n').FirstOrDefault(l => l.Contains("Washline.Reading", StringComparison.Ordinal))?.Trim().Split(" in ")[0] ?? "";

    private static string Shown(string text) => System.Text.Json.JsonSerializer.Serialize(text[..Math.Min(400, text.Length)]);
}

using System.Diagnostics;
using System.Globalization;

namespace Washline.Tests.Reading;

/// <summary>Many texts through one reader: whether it throws, hangs, takes long for what it was given, or drops a word.</summary>
/// <param name="reader">Its name.</param>
/// <param name="make">The text of a seed.</param>
/// <param name="read">Reads a text, and gives what is wrong with the answer; nothing when all is well.</param>
internal sealed class FuzzRun(string reader, Func<int, string> make, Func<string, string?> read)
{
    /// <summary>A text of a few letters that takes longer than this hangs; a reader needs about a millisecond.</summary>
    private static readonly TimeSpan Hang = TimeSpan.FromSeconds(20);

    private const int Slow = 200; // times what the texts before it took, by the letter
    private const int Beside = 100; // letters that reading nothing at all is worth
    private static readonly long Worth = Stopwatch.Frequency / 10; // less than 100 ms is not looked at: a busy machine pauses so long

    private readonly Dictionary<string, (int Seed, string Text, long Times)> breaches = new(StringComparer.Ordinal);
    private readonly Stopwatch watch = Stopwatch.StartNew();
    private readonly Lock door = new();
    private int first;
    private long done;
    private long letters;
    private long ticks;
    private long since;
    private string now = "";

    /// <summary>How many texts were read.</summary>
    public long Done => Interlocked.Read(ref done);

    public int Different => breaches.Count;

    /// <summary>What came of it, a breach a line.</summary>
    public string Report => string.Create(CultureInfo.InvariantCulture, $"{reader}: {Done} texts of {letters / Math.Max(1, Done)} letters from seed {first} in {watch.Elapsed.TotalSeconds:0} s; {breaches.Count} kinds of breach")
        + string.Concat(breaches.Select(b => string.Create(CultureInfo.InvariantCulture, $"\n  {b.Value.Times} × {b.Key}\n    seed {b.Value.Seed}: {Shown(b.Value.Text)}")));

    /// <summary>Reads the texts of so many seeds, one after another, for so long at most.</summary>
    public FuzzRun Run(int seed, long count, TimeSpan time)
    {
        first = seed;
        var reading = new Thread(() => Read(count, time), 16 << 20) { IsBackground = true };
        reading.Start();
        while (!reading.Join(500))
        {
            var (at, text) = (Interlocked.Read(ref since), Volatile.Read(ref now));
            if (watch.ElapsedMilliseconds - at <= Hang.TotalMilliseconds || at == 0) continue;
            Breach($"hangs for more than {Hang.TotalSeconds} s", unchecked(seed + (int)Done), text);
            break;
        }

        watch.Stop();
        return this;
    }

    private void Read(long count, TimeSpan time)
    {
        for (var i = 0L; i < count && watch.Elapsed < time && Different < 20; i++)
        {
            var at = unchecked(first + (int)i);
            var text = make(at);
            Volatile.Write(ref now, text);
            Interlocked.Exchange(ref since, watch.ElapsedMilliseconds + 1);
            try
            {
                var took = Timed(text, at);
                if (IsSlow(took, text) && IsSlow(Enumerable.Range(0, 5).Min(_ => Timed(text, at)), text)) Breach($"takes more than {Slow} times as long as others", at, text);
                (ticks, letters) = (ticks + took, letters + text.Length);
            }
            catch (Exception e)
            {
                Breach($"{e.GetType().Name} {Where(e)}", at, text);
            }

            Interlocked.Increment(ref done);
        }
    }

    private long Timed(string text, int at)
    {
        var start = Stopwatch.GetTimestamp();
        if (read(text) is { } wrong) Breach(wrong, at, text);
        return Stopwatch.GetTimestamp() - start;
    }

    // A pause of the machine is no slow reader: it must be slow six times over.
    private bool IsSlow(long took, string text) => took > Worth && Done > 200 && (double)took / (text.Length + Beside) > Slow * (double)ticks / (letters + Done * Beside);

    private void Breach(string what, int at, string text)
    {
        lock (door)
        {
            breaches[what] = breaches.TryGetValue(what, out var known) ? (known.Text.Length <= text.Length ? known : (at, text, 0)) with { Times = known.Times + 1 } : (at, text, 1);
        }
    }

    private static string Where(Exception e) => (e.StackTrace ?? "").Split('\n').FirstOrDefault(l => l.Contains("Washline.", StringComparison.Ordinal))?.Trim().Split(" in ")[0] ?? "";

    private static string Shown(string text) => System.Text.Json.JsonSerializer.Serialize(text[..Math.Min(400, text.Length)]);
}

using System.Formats.Tar;
using System.IO.Compression;
using System.Text;
using Washline.App;
using Washline.App.Storage;
using Washline.Drinks;
using Washline.Reading;

namespace Washline.Tests.Reading;

/// <summary>The readers that are fuzzed: what each is given, and what its answer owes.</summary>
internal static class FuzzReaders
{
    /// <summary>The run of that reader: the name of a form, <c>Encodings</c> or <c>Archives</c>.</summary>
    public static FuzzRun Of(string reader)
    {
        var form = Enum.TryParse<TextForm>(reader, out var named) ? named : TextForm.Written;
        var corpus = Corpus(form);
        return reader switch
        {
            "Encodings" => new FuzzRun(reader, seed => Encoded(seed, corpus), text => Refused(() => FileText.Of(Encoding.Latin1.GetBytes(text), "it").Text.Length > text.Length ? "more letters than bytes" : null)),
            "Archives" => new FuzzRun(reader, seed => Packed(seed, corpus), text => Refused(() => Unpacked(text))),
            _ => new FuzzRun(reader, seed => FuzzInput.Of(form, seed, corpus), text => Dropped(text, Draft.TakeIn(text, Kinds.Catalogue, form))),
        };
    }

    /// <summary>What a draft owes its text and does not give; nothing when it gives all.</summary>
    public static string? Dropped(string text, Draft draft)
    {
        var lines = text.TrimStart('\uFEFF').Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n').Split('\n');
        var entries = draft.Account.ToLookup(a => a.Line);
        for (var line = 1; line <= lines.Length; line++)
        {
            if (!Letters(lines[line - 1]).SequenceEqual(entries[line].OrderBy(a => a.Column).SelectMany(a => Letters(a.Text)))) return "an account that does not hold every word once";
        }

        if (draft.Account.Any(a => a.Line < 1 || a.Line > lines.Length)) return "an account of a line that is not there";
        if (draft.Problems.Any(p => p.Line < 1 || p.Line > lines.Length || p.Column < 1 || p.Column > lines[p.Line - 1].Length + 1)) return "a problem outside the text";
        if (draft.Problems.Any(p => p.What.Length == 0 || p.Try.Length == 0)) return "a problem without a sentence";
        if (draft.Origins.Count != 0 && draft.Origins.Count != draft.Specs.Count) return "origins of other specs than there are";
        if (draft.Origins.SelectMany(o => o).Any(o => o.Line < 1 || o.Line > lines.Length)) return "an origin outside the text";
        return draft.Specs.SelectMany(s => s.Lines).Any(l => double.IsNaN(l.Amount.Low) || l.Amount.Low < 0 || l.Amount.High < l.Amount.Low) ? "an amount that is none" : null;
    }

    private static IEnumerable<char> Letters(string text) => text.Where(char.IsLetterOrDigit);

    // Whole texts to bend: our corpus in the form of that name, and the demo's specs.
    private static List<string> Corpus(TextForm form)
    {
        var folder = form switch { TextForm.RecipeData => "data", TextForm.Spoken or TextForm.Captions => "spoken", _ => "written" };
        var ours = House.Path("tests", "Washline.Tests", "Corpus", "ours", folder);
        var files = Directory.Exists(ours) ? Directory.EnumerateFiles(ours).Where(f => !f.EndsWith(".expected", StringComparison.Ordinal)) : [];
        return [.. files.Concat(Directory.EnumerateFiles(House.Path("src", "Washline.App", "Demo", "specs"))).Order(StringComparer.Ordinal).Select(File.ReadAllText)];
    }

    private static string? Refused(Func<string?> read)
    {
        try
        {
            return read();
        }
        catch (Refusal refusal)
        {
            return refusal.Message.Length == 0 ? "a refusal without a sentence" : null;
        }
    }

    // Bytes as letters of Latin-1: a text in some encoding, with a few bytes changed.
    private static string Encoded(int seed, List<string> corpus)
    {
        var chance = new Random(seed);
        var text = FuzzInput.Of((TextForm)chance.Next(5), seed, corpus);
        Encoding[] all = [Encoding.UTF8, Encoding.UTF8, Encoding.Unicode, Encoding.BigEndianUnicode, Encoding.UTF32, Encoding.Latin1];
        var encoding = chance.One(all);
        byte[] bytes = [.. chance.Next(2) == 0 ? encoding.GetPreamble() : [], .. encoding.GetBytes(text)];
        return Encoding.Latin1.GetString(Changed(bytes, chance, chance.Next(6)));
    }

    // An archive of a few texts, with a few bytes changed; the first letter says which kind it is.
    private static string Packed(int seed, List<string> corpus)
    {
        var chance = new Random(seed);
        var kind = "zpg"[chance.Next(3)];
        using var packed = new MemoryStream();
        var files = Enumerable.Range(0, chance.Next(4)).Select(i => (Name: chance.One(["a.txt", "b/c.json", "../x", "/abs", "é.txt", "C:d", ".", "x\u202Ey"]) + i, Text: FuzzInput.Of(TextForm.Written, seed + i, corpus))).ToList();
        if (kind == 'z')
        {
            using var zip = new ZipArchive(packed, ZipArchiveMode.Create, leaveOpen: true);
            foreach (var (name, text) in files)
            {
                using var entry = zip.CreateEntry(name, CompressionLevel.Fastest).Open();
                entry.Write(Encoding.UTF8.GetBytes(text));
            }
        }
        else
        {
            using var outer = kind == 'g' ? (Stream)new GZipStream(packed, CompressionLevel.Fastest, leaveOpen: true) : new BufferedStream(packed);
            using (var tar = new TarWriter(outer, chance.One([TarEntryFormat.Pax, TarEntryFormat.Ustar, TarEntryFormat.Gnu, TarEntryFormat.V7]), leaveOpen: true))
            {
                foreach (var (name, text) in files)
                {
                    using var data = new MemoryStream(Encoding.UTF8.GetBytes(text));
                    tar.WriteEntry(tar.Format == TarEntryFormat.V7 ? new V7TarEntry(TarEntryType.V7RegularFile, name) { DataStream = data } : new PaxTarEntry(TarEntryType.RegularFile, name) { DataStream = data });
                }
            }

            outer.Flush();
            if (kind == 'g') outer.Dispose();
            return kind + Encoding.Latin1.GetString(Changed(packed.ToArray(), chance, chance.Next(6)));
        }

        return kind + Encoding.Latin1.GetString(Changed(packed.ToArray(), chance, chance.Next(6)));
    }

    private static string? Unpacked(string text)
    {
        var path = Path.Combine(Path.GetTempPath(), $"washline-fuzz-{Environment.ProcessId}{text[0] switch { 'z' => ".zip", 'p' => ".tar", _ => ".tgz" }}");
        File.WriteAllBytes(path, Encoding.Latin1.GetBytes(text[1..]));
        try
        {
            _ = Parcel.Count(path);
            return Parcel.Open(path).Any(e => e.Bytes is null == (e.What.Length == 0)) ? "a file that is neither read nor passed over" : null;
        }
        finally
        {
            File.Delete(path);
        }
    }

    private static byte[] Changed(byte[] bytes, Random chance, int places)
    {
        for (; places > 0 && bytes.Length > 0; places--)
        {
            var at = chance.Next(3) == 0 ? Math.Max(0, bytes.Length - 1 - chance.Next(120)) : chance.Next(bytes.Length);
            bytes = chance.Next(6) switch
            {
                0 => bytes[..at],
                1 => [.. bytes[..at], (byte)chance.Next(256), .. bytes[at..]],
                2 => [.. bytes[..at], .. bytes[Math.Min(bytes.Length, at + chance.Next(8))..]],
                _ => [.. bytes[..at], (byte)chance.Next(256), .. bytes[(at + 1)..]],
            };
        }

        return bytes;
    }
}

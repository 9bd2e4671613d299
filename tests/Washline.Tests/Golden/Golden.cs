namespace Washline.Tests;

/// <summary>Answers that are kept as text files beside this one and compared to the letter.</summary>
/// <remarks>It lives in the namespace above its folder, so that tests in every room can say <c>Golden.Check</c>.</remarks>
public static class Golden
{
    /// <summary>Fails unless the text is that of <c>tests/Washline.Tests/Golden/NAME.txt</c>; with WASHLINE_ACCEPT=1 it is written there instead.</summary>
    public static void Check(string name, string text)
    {
        var file = House.Path("tests", "Washline.Tests", "Golden", name + ".txt");
        var now = text.ReplaceLineEndings("\n").TrimEnd('\n') + "\n";
        if (Environment.GetEnvironmentVariable("WASHLINE_ACCEPT") == "1")
        {
            File.WriteAllText(file, now);
            return;
        }

        var kept = File.Exists(file) ? File.ReadAllText(file).ReplaceLineEndings("\n") : "";
        if (kept == now) return;
        Assert.Fail($"{Difference(kept.Split('\n'), now.Split('\n'))}\n{name}.txt says otherwise (- kept, + now). If it is right now: WASHLINE_ACCEPT=1 ./test, and read the difference before you commit it.");
    }

    private static string Difference(string[] kept, string[] now)
    {
        var same = kept.Zip(now).TakeWhile(pair => pair.First == pair.Second).Count();
        var sameEnd = kept.Reverse().Zip(now.Reverse()).TakeWhile(pair => pair.First == pair.Second).Count();
        sameEnd = Math.Min(sameEnd, Math.Min(kept.Length, now.Length) - same);
        return string.Join('\n',
            kept.Take(same).TakeLast(2).Select(line => "  " + line)
                .Concat(kept[same..^sameEnd].Select(line => "- " + line))
                .Concat(now[same..^sameEnd].Select(line => "+ " + line)));
    }
}

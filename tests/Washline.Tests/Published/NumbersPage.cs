using System.Globalization;

namespace Washline.Tests.Published;

/// <summary>docs/numbers.md is written here: WASHLINE_ACCEPT=1 writes it, and the test fails while it is stale.</summary>
public class NumbersPage
{
    private const string Head = """
        # How good are the numbers

        Written by the tests (`WASHLINE_ACCEPT=1 ./test --numbers` writes it again; `./test --numbers` checks it and prints the rows). The test fails while this page
        is not what was measured, and each check has a test of its own that fails when a row is further off than is allowed.

        *Published* was read in a table, formula or worked example that others printed. *Second opinion* is another program's answer. *Second implementation* is ours,
        written from the published equations by somebody who had not read the first: it finds slips, not faults of the equations. *Drawn by chance* holds first-order bands against
        drinks made with every uncertain input thrown. *Pinned* is our own earlier answer (the sheets under `tests/Washline.Tests/Golden`); those stand in no row here.
        *The formula's own values* prove the typing and not nature.

        ## What is said to be kept

        Every row of each table within the range that is said. *Worst* is the largest difference there, ours minus theirs; *mean* is over all rows, without sign.

        CLAIMS

        Of the old handbook's series lange these rows stand more than 0.5 K from ours, and as far from Melinder, which is the series that the model follows: LANGE.
        The others of that series, and all of melinder and seccool to 40 % by mass, are within the limit.

        ## Every check

        *Worst* is the row that uses up most of what is allowed there, ours minus theirs; *mean* is over all rows, without sign. Where what is allowed goes by the row, it is that row's.

        | what | file | label | rows | worst | where | mean | allowed there | left out |
        |---|---|---|---|---|---|---|---|---|

        """;

    private static readonly Lazy<string> Measured = new(Now);

    [Fact]
    public void The_page_on_how_good_the_numbers_are_is_what_was_measured()
    {
        var file = House.Path("docs", "numbers.md");
        if (Environment.GetEnvironmentVariable("WASHLINE_ACCEPT") == "1")
        {
            File.WriteAllText(file, Measured.Value);
            return;
        }

        var stale = Stale(File.Exists(file) ? File.ReadAllText(file) : "", Measured.Value);
        Assert.True(stale.Length == 0, "docs/numbers.md is stale; WASHLINE_ACCEPT=1 ./test --numbers writes it. Measured now:\n" + stale);
    }

    [Fact]
    public void One_figure_changed_or_one_line_lost_makes_the_page_stale()
    {
        var lines = Measured.Value.Split('\n');
        for (var i = 0; i < lines.Length; i++)
        {
            if (!lines[i].StartsWith("| ", StringComparison.Ordinal)) continue;
            var digit = lines[i].Select((c, at) => char.IsAsciiDigit(c) ? at : -1).Max();
            if (digit < 0) continue;
            var changed = lines[i][..digit] + (char)('0' + (lines[i][digit] - '0' + 1) % 10) + lines[i][(digit + 1)..];
            Assert.Contains(lines[i], Stale(string.Join('\n', [.. lines[..i], changed, .. lines[(i + 1)..]]), Measured.Value), StringComparison.Ordinal);
            Assert.NotEqual("", Stale(string.Join('\n', [.. lines[..i], .. lines[(i + 1)..]]), Measured.Value));
        }

        Assert.Equal("", Stale(Measured.Value.ReplaceLineEndings("\r\n"), Measured.Value));
    }

    [Fact]
    public void Every_check_on_the_page_holds() => Assert.All(PhysicsPage.Checks, c => c.Hold());

    // What the kept page lacks; nothing when it is what was measured.
    private static string Stale(string kept, string now)
    {
        var lines = kept.ReplaceLineEndings("\n");
        if (lines == now) return "";
        var missing = string.Join('\n', now.Split('\n').Except(lines.Split('\n')));
        return missing.Length > 0 ? missing : "the same lines, in another order or with others between them";
    }

    private static string Now()
    {
        var head = Head.Replace("CLAIMS", Claims.Table(), StringComparison.Ordinal).Replace("LANGE", Claims.Lange(), StringComparison.Ordinal);
        return (head + string.Join('\n', PhysicsPage.Checks.Select(c => c.Line)) + "\n\n" + Drinks() + "\n\n" + Notes()).ReplaceLineEndings("\n").TrimEnd('\n') + "\n";
    }

    private static string Drinks() => $"""
        ## Measured drinks, row by row

        Every row of `dilution-published.csv`, what it is, and how far we are from it. Household thermometers and conditions half told: 3 °C are allowed.

        - *published, one page*: read on one page, nobody else's figure stands beside it.
        - *used in calibration*: something in the model was set by it, so agreement proves nothing.
        - *not seen by calibration*: nothing was set by it. Where strength or ice was not told we took those of `Published/BarTemperatures.cs`, so agreement is weak evidence.
        - *from memory*: the two regressions of a 2014 book (dilution on the strength before ice), whose coefficients we read nowhere. The rates of shake and stir were set on them; they are no published check.
        - *not held*: too little is told to hold the row to a figure; ours is what the program says with 20 °C, 200 g of wet tray ice and the time in the row.

        {MeasuredDrinks.Summary()}

        {MeasuredDrinks.Table()}
        """;

    private static string Notes()
    {
        var lange = FreezingTables.FromMelinder("lange");
        var seccool = FreezingTables.FromMelinder("seccool");
        return string.Create(CultureInfo.InvariantCulture, $"""
            ## What the rows do not say

            - **Freezing tables of ethanol disagree among themselves.** Against Melinder, drawn straight between its rows, the second correlation of the same data
              stands {seccool.Kelvin:+0.0;−0.0} K at {seccool.Percent:0.#} % by mass, and Lange's handbook {lange.Kelvin:+0.0;−0.0} K at {lange.Percent:0.#} %. The model follows Melinder; Lange's values
              are not smooth and are kept to show how far apart printed tables stand.
            - **The chilling vectors** of our two prototypes differ from ours by plain steps and by the heat their ice takes up to its core. Walked in those steps and with that core every
              row comes out (*walked as the prototypes walk*), and neither of the two alone explains them. The size of the blender's ice is not told there; 25 mm gives all three figures of both rows.
            - **Sucrose above 8 °Brix** has no independent table here: the densities are those of the published formula, whose water term is from memory. What is
              independent are two gravities after NBS C440.
            - **Sweetened spirit** has one printed liqueur to be held against, and the manual's rule of hidden proof at 80, 90 and 100 proof; measured mixtures of ethanol and sucrose (Hackbarth 2009, 2011) whose coefficients were not read.
            - **Examples of mixing** are allowed the last printed digit, or what the printed limits leave. The pharmacopoeia prints *about*
              970 mL for a spirit of 94.9 to 96.0 %: ours is 971.4, within what those limits leave. Those marked doubtful are a classroom's round figure, a page that is 0.2 mL
              under both the formula and the gauging manual, and a contraction applied to the wrong volume.
            - **Hidden proof**: the gauging manual's rule is one of experience, for what oak leaves; sugar hides more by its density.
            - **No check at all**, for what they rest on is from memory: refractometer readings, the room that salt, fat, pulp and each acid take, energy factors. pH has one second opinion
              (lime acid, 1.84) and the pH of each juice is put in, not found.
            """);
    }
}

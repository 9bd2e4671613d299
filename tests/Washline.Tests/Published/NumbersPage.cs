using System.Globalization;

namespace Washline.Tests.Published;

/// <summary>docs/numbers.md is written here: WASHLINE_ACCEPT=1 writes it, and the test fails while it is stale.</summary>
public class NumbersPage
{
    private const string Head = """
        # How good are the numbers

        Written by the tests (`WASHLINE_ACCEPT=1 ./test --numbers` writes it again; `./test --numbers` checks it and prints the rows). The test fails while this page
        is not what was measured, and each check has a test of its own that fails when a row is further off than is allowed.

        *Published* was read in a table, formula or worked example that others printed. *Second opinion* is another program's answer. *Pinned* is our own
        earlier answer (the sheets under `tests/Washline.Tests/Golden`); those stand in no row here. *The formula's own values* prove the typing and not
        nature. *Worst* is the row that uses up most of what is allowed there, ours minus theirs; *mean* is over all rows, without sign.

        | what | file | label | rows | worst | where | mean | allowed there | left out |
        |---|---|---|---|---|---|---|---|---|

        """;

    [Fact]
    public void The_page_on_how_good_the_numbers_are_is_what_was_measured()
    {
        var file = House.Path("docs", "numbers.md");
        var now = (Head + string.Join('\n', PhysicsPage.Checks.Select(c => c.Line)) + "\n\n" + Notes()).ReplaceLineEndings("\n").TrimEnd('\n') + "\n";
        if (Environment.GetEnvironmentVariable("WASHLINE_ACCEPT") == "1")
        {
            File.WriteAllText(file, now);
            return;
        }

        var kept = File.Exists(file) ? File.ReadAllText(file).ReplaceLineEndings("\n").Split('\n') : [];
        var stale = now.Split('\n').Except(kept).ToList();
        Assert.True(string.Join('\n', kept) == now, "docs/numbers.md is stale; WASHLINE_ACCEPT=1 ./test --numbers writes it. Measured now:\n" + string.Join('\n', stale));
    }

    private static string Notes()
    {
        var lange = FreezingTables.FromMelinder("lange");
        var seccool = FreezingTables.FromMelinder("seccool");
        return string.Create(CultureInfo.InvariantCulture, $"""
            ## What the rows do not say

            - **Freezing tables of ethanol disagree among themselves.** Against Melinder, drawn straight between its rows, the second correlation of the same data
              stands {seccool.Kelvin:+0.0;−0.0} K at {seccool.Percent:0.#} % by mass, and Lange's handbook {lange.Kelvin:+0.0;−0.0} K at {lange.Percent:0.#} %. The model follows Melinder; Lange's values
              are not smooth and are kept to show how far apart printed tables stand.
            - **Sucrose above 8 °Brix** has no independent table here: the densities are those of the published formula, whose water term is from memory. What is
              independent are two gravities after NBS C440.
            - **Sweetened spirit** has one printed liqueur to be held against, and measured mixtures of ethanol and sucrose (Hackbarth 2009, 2011) whose coefficients were not read.
            - **Examples of mixing** are allowed the last printed digit, or what the printed limits leave. The pharmacopoeia prints *about*
              970 mL for a spirit of 94.9 to 96.0 %: ours is 971.4, within what those limits leave. Those marked doubtful are a classroom's round figure, a page that is 0.2 mL
              under both the formula and the gauging manual, and a contraction applied to the wrong volume.
            - **Hidden proof**: the gauging manual's rule is one of experience, for what oak leaves; sugar hides more by its density.
            - **No check at all**, for what they rest on is from memory: refractometer readings, the room that salt, fat, pulp and each acid take, energy factors. pH has one second opinion
              (lime acid, 1.84) and the pH of each juice is put in, not found.
            """);
    }
}

using System.CommandLine;
using Washline.App.Storage;

namespace Washline.App.Commands;

/// <summary><c>washline bar add</c>: something new at home.</summary>
internal static class BarAdd
{
    public static Command Make() => new Verb("add", "Adds something to the bar.", "washline bar add bottle \"The rye\" --kind \"rye whisky\" --strength 50 --size 700ml")
    {
        One("bottle", "Adds a bottle.", "washline bar add bottle \"The rye\" --kind \"rye whisky\" --strength 50 --size 700ml --left 500ml --price 24.50 --currency EUR"),
        One("house-made", "Adds a syrup or something else made at home.", "washline bar add house-made \"Rich syrup\" --kind \"rich simple syrup\" --left 300ml --made 2026-03-14 --use-by 2026-04-14"),
        One("fruit", "Adds fruit, eggs or herbs, counted.", "washline bar add fruit Limes --kind \"lime juice\" --count 6"),
        One("tool", "Adds a tool.", "washline bar add tool shaker"),
        One("glass", "Adds a glass.", "washline bar add glass Coupe --shape coupe --rim 95mm --depth 40mm --capacity 180ml --count 4"),
        One("measure", "Adds a jigger or another measure.", "washline bar add measure Jigger --unit oz --step 1/4 --eye 1/8 --largest 2"),
    };

    private static Verb One(string what, string does, string example)
    {
        var name = new Argument<string>("NAME") { Description = "What the household calls it." };
        var options = new ThingOptions(Columns.ByWhat[what].Where(c => c != "name"));
        var command = new Verb(what, does, example) { name };
        options.To(command);
        command.SetAction(result =>
        {
            var arrivals = new Arrivals([options.Entry(result, what, result.GetRequiredValue(name))], []);
            IReadOnlyList<Reading.Problem> problems = [];
            var bar = result.OpenBar().Change(bar => arrivals.Into(bar, out problems));
            if (problems.Count > 0) return result.Refuse(problems);
            var thing = Things.Of(bar).Single(t => Things.What(t) == what && Household.Same(Things.Name(t), result.GetRequiredValue(name).Trim()));
            return result.Tell("Added", thing);
        });
        return command;
    }
}

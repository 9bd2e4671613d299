using System.CommandLine;
using Washline.App.Storage;
using Washline.Reading;

namespace Washline.App.Commands;

/// <summary><c>washline bar import</c>: everything in a file comes to the bar, or nothing does.</summary>
internal static class BarImport
{
    public static Command Make()
    {
        var file = new Argument<string>("FILE") { Description = "A CSV or JSON file as 'washline bar export' writes it; - reads what is piped in." };
        var command = new Verb("import", "Adds what a file holds to the bar: all of it, or nothing when there is a problem.", "washline bar import home.csv") { file };
        command.SetAction(result =>
        {
            var from = result.GetRequiredValue(file);
            var arrivals = Arrivals.Read(result.TextOf(from));
            IReadOnlyList<Problem> problems = [];
            result.OpenBar().Change(bar => arrivals.Into(bar, out problems));
            if (problems.Count > 0) return result.Problems(from, problems);
            if (result.Json()) result.Output().WriteLine($$"""{"added": {{arrivals.Entries.Count}}}""");
            else result.Output().WriteLine(arrivals.Entries.Count == 1 ? "Added 1 thing." : $"Added {arrivals.Entries.Count} things.");
            return 0;
        });
        return command;
    }
}

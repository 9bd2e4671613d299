using Washline.Drinks;

namespace Washline.Fitting.AtHome;

/// <summary>The maker's garnishes with what is at home.</summary>
internal static class HomeGarnish
{
    /// <summary>What is not there, and what takes its place. A home in which nothing is that a garnish could be made from is taken to have them all.</summary>
    public static IEnumerable<HomeReason> Of(Spec spec, Bar bar, Kinds kinds)
    {
        var asked = spec.Garnish.SelectMany(g => Garnish.In(g, kinds)).ToList();
        var lists = asked.Count > 0 && (Garnish.All.Any(g => !g.From.Contains("pantry") && g.IsAt(bar)) || asked.Any(a => a.Either.Any(g => !g.From.Contains("pantry") && g.IsAt(bar))));
        var laid = asked.SelectMany(a => a.Either).Select(g => g.Name).ToHashSet(); // one thing is not laid on twice
        var tools = new HashSet<string>();
        foreach (var (words, either) in asked)
        {
            var made = lists ? either.FirstOrDefault(g => g.IsAt(bar)) : either[0];
            if (made is null)
            {
                var (instead, reason) = either.SelectMany(g => g.StandIns).FirstOrDefault(s => s.Instead.IsAt(bar) && !laid.Contains(s.Instead.Name));
                yield return Missing(words, either[0], instead, reason);
                if (instead is not null) laid.Add(instead.Name);
                made = instead;
            }

            if (made is not null && tools.Add(made.Tool) && Tool(made, bar) is { } tool) yield return tool;
        }
    }

    private static HomeReason Missing(string asked, Garnish garnish, Garnish? instead, string? reason) => new()
    {
        Matter = HomeMatter.Garnish,
        Rule = "garnish",
        Missing = asked,
        Instead = instead?.Name ?? "",
        Why = instead is null ? $"No {asked} at home: serve it without." : $"No {asked} at home: {Told.A(instead.Name)} instead; {reason}.",
        Effect = $"Lost: {garnish.Lost}. What is in the glass stays the same.",
        Lost = garnish.Lost,
    };

    private static HomeReason? Tool(Garnish garnish, Bar bar)
    {
        if (bar.Tools.Count == 0) return null;
        var (why, instead) = garnish.Tool switch
        {
            "peeler" when !HomeTools.Has(bar, "peeler", "zester", "channel knife", "knife") => ($"No peeler at home: cut the {garnish.Name} with a small sharp knife, thin and without the white.", "sharp knife"),
            "grater" when !HomeTools.Has(bar, "grater", "fine grater", "rasp", "zester") => ($"No grater at home: scrape the {garnish.Name} with the edge of a knife.", "knife"),
            _ => ("", ""),
        };
        return why.Length == 0 ? null : new HomeReason
        {
            Matter = HomeMatter.Tool,
            Rule = garnish.Tool,
            Missing = garnish.Tool,
            Instead = instead,
            Why = why,
            Effect = HomeReason.Same,
        };
    }
}

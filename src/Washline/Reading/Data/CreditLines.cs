using System.Text.RegularExpressions;

namespace Washline.Reading.Data;

/// <summary>Whose a recipe is: author, place, page, licence.</summary>
internal static partial class CreditLines
{
    /// <summary>Adds what is not said already: people as the maker, a place or publisher as where, the page as how it is known; an open licence lets it be passed on.</summary>
    public static void Of(Graph graph, JsonPart recipe, IReadOnlySet<Key> said, Action<string, Placed> add)
    {
        var credit = graph.Words(recipe, "creditText");
        var owners = Names(graph, recipe, people: null, "copyrightHolder");
        var makers = Names(graph, recipe, people: true, "author", "creator");
        var houses = Names(graph, recipe, people: false, "author", "creator");
        if (!said.Contains(Key.Maker))
        {
            if (makers.Count == 0 && credit is not null) makers = [credit];
            else if (makers.Count == 0 && owners.Count > 0) makers = owners;
            if (makers.Count > 0) add("maker: ", Placed.Join(", ", makers));
        }

        var place = graph.Words(recipe, "locationCreated") ?? (houses.Count > 0 ? houses[0] : null) ?? graph.Words(recipe, "publisher", "sourceOrganization", "isPartOf");
        if (!said.Contains(Key.Where) && place is not null) add("where: ", place);
        if (!said.Contains(Key.Known) && Page(graph, recipe) is { } page) add("known: ", page);
        foreach (var licence in Licences(graph, recipe))
        {
            add("note: licence: ", licence);
            if (said.Contains(Key.PassOn) || !Open().IsMatch(licence.Text)) continue;
            add("pass on: yes", licence.Slice(0, 0));
            said = new HashSet<Key>(said) { Key.PassOn };
        }

        if (credit is not null && makers.TrueForAll(m => m.Text != credit.Text)) add("note: credit: ", credit);
        foreach (var owner in owners.Where(o => makers.TrueForAll(m => m.Text != o.Text))) add("note: copyright: ", owner);
        if (graph.Words(recipe, "copyrightNotice") is { } notice) add("note: copyright: ", notice);
    }

    private static List<Placed> Names(Graph graph, JsonPart recipe, bool? people, params string[] names) =>
        [.. graph.Of(recipe, names)
            .Where(v => people is null || people == !(graph.IsA(v, "Organization") || graph.IsA(v, "Corporation") || graph.IsA(v, "LocalBusiness") || graph.IsA(v, "BarOrPub")))
            .Select(v => v.Members is null ? graph.Plain(v) : graph.Words(v, "name")).OfType<Placed>().Where(n => n.Text.Length > 0)];

    private static Placed? Page(Graph graph, JsonPart recipe)
    {
        if (graph.Words(recipe, "url") is { } url) return url;
        foreach (var page in graph.Of(recipe, "mainEntityOfPage"))
        {
            if ((page.Members is null ? graph.Plain(page) : graph.Words(page, "@id", "url")) is { } place && Address().IsMatch(place.Text)) return place;
        }

        return graph.Words(recipe, "@id") is { } id && Address().IsMatch(id.Text) ? id : null;
    }

    private static IEnumerable<Placed> Licences(Graph graph, JsonPart recipe) =>
        graph.Of(recipe, "license").Select(v => v.Members is null ? graph.Plain(v) : graph.Words(v, "url", "@id", "name")).OfType<Placed>();

    [GeneratedRegex(@"^https?://\S+$", RegexOptions.IgnoreCase)]
    private static partial Regex Address();

    [GeneratedRegex(@"creativecommons\.org/(?:licenses|publicdomain)/|^CC0\b|^CC[ -]BY\b|^public domain$", RegexOptions.IgnoreCase)]
    private static partial Regex Open();
}

namespace Washline.Reading.Data;

/// <summary>The objects of JSON-LD, found by type and by <c>@id</c>; names are given without the address of schema.org.</summary>
internal sealed class Graph
{
    private static readonly string[] Prefixes = ["https://schema.org/", "http://schema.org/", "https://www.schema.org/", "http://www.schema.org/", "schema:"];

    private static readonly string[] Called = ["name", "@value"];

    private readonly string source;
    private readonly List<JsonPart> objects = [];
    private readonly Dictionary<string, JsonPart> byId = new(StringComparer.Ordinal);

    public Graph(string source, IReadOnlyList<JsonPart> roots)
    {
        this.source = source;
        foreach (var root in roots) Gather(root);
        foreach (var part in objects)
        {
            if (part.Members!.Count > 1 && Member(part, "@id") is { IsString: true } id) byId.TryAdd(source[id.Start..id.End], part);
        }
    }

    /// <summary>Everything that is a recipe, in the order of the text; those that only point to another page are left out.</summary>
    /// <param name="whole">Whether all of the data was read; what breaks off before it lists anything is no recipe.</param>
    public IReadOnlyList<JsonPart> Recipes(bool whole)
    {
        bool Lists(JsonPart part) => Of(part, "recipeIngredient", "ingredients").Any() || Of(part, "recipeInstructions").Any();
        var typed = objects.Where(o => IsA(o, "Recipe") || Member(o, "recipeIngredient") is not null).ToList();
        return typed.Where(Lists).ToList() is { Count: > 0 } full ? full : whole ? typed : [];
    }

    public bool IsA(JsonPart part, string type) => Each(Member(part, "@type")).Any(t => t.IsString && Bare(source[t.Start..t.End]).Equals(type, StringComparison.OrdinalIgnoreCase));

    /// <summary>The values of the first of those properties that there is, one by one; an <c>@id</c> alone stands for what has it.</summary>
    public IEnumerable<JsonPart> Of(JsonPart part, params string[] names)
    {
        foreach (var name in names)
        {
            if (Member(part, name) is { } found) return Each(found);
        }

        return [];
    }

    /// <summary>The words of the first value of those properties that has any; of an object its name.</summary>
    public Placed? Words(JsonPart part, params string[] names) => Words(part, names, depth: 0);

    private Placed? Words(JsonPart part, string[] names, int depth)
    {
        foreach (var name in depth < 4 ? names : []) // a name that names itself by its id goes round
        {
            foreach (var value in Each(Member(part, name)))
            {
                if ((value.Members is null ? Plain(value) : Words(value, Called, depth + 1)) is { Text.Length: > 0 } words) return words;
            }
        }

        return null;
    }

    /// <summary>A value as plain words; empty for an object.</summary>
    public Placed Plain(JsonPart value) => PlainWords.Of(value.Words(source));

    /// <summary>The value of that name, whatever the address before it.</summary>
    public JsonPart? Member(JsonPart part, string name)
    {
        if (part.Members is null) return null;
        foreach (var (known, value) in part.Members)
        {
            if (known.Is(source, name) || known.End - known.Start > name.Length && Bare(source[known.Start..known.End]) == name) return value;
        }

        return null;
    }

    private IEnumerable<JsonPart> Each(JsonPart? value, int depth = 0)
    {
        if (value is null || depth > 8) return [];
        if (value.Items is not null) return value.Items.SelectMany(i => Each(i, depth + 1));
        if (value.Members is null) return source.AsSpan(value.Start, value.End - value.Start).SequenceEqual("null") && !value.IsString ? [] : [value];
        if ((Member(value, "@list") ?? Member(value, "@set") ?? Member(value, "@value")) is { } inner) return Each(inner, depth + 1);
        if (IsA(value, "ItemList") && Member(value, "itemListElement") is { } items) return Each(items, depth + 1);
        if (IsA(value, "ListItem") && Member(value, "item") is { } item) return Each(item, depth + 1);
        if (value.Members.Count == 1 && Member(value, "@id") is { IsString: true } id && byId.TryGetValue(source[id.Start..id.End], out var meant)) return [meant];
        return [value];
    }

    private void Gather(JsonPart part)
    {
        if (part.Members is not null) objects.Add(part);
        foreach (var (_, value) in part.Members ?? []) Gather(value);
        foreach (var item in part.Items ?? []) Gather(item);
    }

    private static string Bare(string name)
    {
        var prefix = Array.Find(Prefixes, p => name.StartsWith(p, StringComparison.OrdinalIgnoreCase));
        return prefix is null ? name : name[prefix.Length..];
    }
}

namespace Washline.Drinks;

/// <summary>Everything at home, as one value that never changes: to change the bar is to make another.</summary>
public sealed record Bar
{
    /// <summary>A home with nothing in it.</summary>
    public static Bar Empty { get; } = new();

    /// <summary>Bottles, by name.</summary>
    public IReadOnlyList<Bottle> Bottles { get; init; } = [];

    /// <summary>Syrups and other things made at home, by name.</summary>
    public IReadOnlyList<HouseMade> HouseMade { get; init; } = [];

    /// <summary>Fruit, eggs, herbs, by name.</summary>
    public IReadOnlyList<Fruit> Fruit { get; init; } = [];

    /// <summary>Tools, by name.</summary>
    public IReadOnlyList<Tool> Tools { get; init; } = [];

    /// <summary>Glasses, by name.</summary>
    public IReadOnlyList<Glass> Glasses { get; init; } = [];

    /// <summary>Jiggers and other measures, by name.</summary>
    public IReadOnlyList<Measure> Measures { get; init; } = [];

    /// <summary>Words that the catalogue does not have, each placed once.</summary>
    public IReadOnlyList<PlacedWords> Words { get; init; } = [];

    /// <summary>The catalogue with the words of this household.</summary>
    public Kinds Kinds => Kinds.Catalogue.With(Words);

    /// <summary>The makers' specs, by title.</summary>
    public IReadOnlyList<Spec> Specs { get; init; } = [];

    /// <summary>What the household pours for them, by title.</summary>
    public IReadOnlyList<HousePour> HousePours { get; init; } = [];

    /// <summary>What the household has told us once.</summary>
    public Settings Settings { get; init; } = Settings.Usual;

    /// <summary>Whether nothing is at home and no spec is kept.</summary>
    public bool IsEmpty => Bottles.Count + HouseMade.Count + Fruit.Count + Tools.Count + Glasses.Count + Measures.Count + Specs.Count == 0;

    /// <summary>The spec of that title, whatever its capitals; nothing when there is none.</summary>
    public Spec? Spec(string title) => Specs.FirstOrDefault(s => string.Equals(s.Title, title.Trim(), StringComparison.OrdinalIgnoreCase));
}

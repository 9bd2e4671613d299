using Washline.Drinks;

namespace Washline.Reading;

/// <summary>A spec while its lines are being read.</summary>
internal sealed class SpecDraft
{
    public SourceLine? TitleLine { get; set; }

    public SourceLine? First { get; set; }

    public string Title { get; set; } = "";

    public List<Line> Lines { get; } = [];

    /// <summary>Where each of the lines stands.</summary>
    public List<Origin> Origins { get; } = [];

    /// <summary>What is to be said about lines without an amount, unless none of them has one.</summary>
    public List<(int Line, Problem Problem)> Unsaid { get; } = [];

    public bool HasIngredientLines { get; set; }

    public List<string> Method { get; } = [];

    /// <summary>Where each of the words of the method stand.</summary>
    public List<(SourceLine Line, string Words)> MethodLines { get; } = [];

    public string? Ice { get; set; }

    public string? Glass { get; set; }

    public List<string>? Garnish { get; set; }

    public List<string> Notes { get; } = [];

    public List<OwnRecipe> OwnRecipes { get; } = [];

    public Credit Credit { get; set; } = Credit.Unknown;

    public double PartMl { get; set; } = Amount.UsualPartMl;

    /// <summary>The amount that holds for the lines that follow: <c>30 ml each:</c>.</summary>
    public Amount? Shared { get; set; }

    /// <summary>Whether nothing of it has been read yet but what stands above the ingredients.</summary>
    public bool IsBare => Title.Length == 0 && !HasIngredientLines;

    public void Add(Line line, SourceLine source, string remark = "")
    {
        Lines.Add(line);
        Origins.Add(new Origin(source.Number, source.Words().Column, string.Join(' ', source.Stretches().Select(s => s.Words))) { Remark = remark });
    }

    public void Add(OwnRecipe recipe)
    {
        if (!OwnRecipes.Contains(recipe)) OwnRecipes.Add(recipe);
    }

    /// <summary>Everything above goes in equal parts.</summary>
    public void MakeEqual()
    {
        for (var i = 0; i < Lines.Count; i++)
        {
            if (Lines[i].Amount.Unit.Kind == UnitKind.Unsaid) Lines[i] = Lines[i] with { Amount = new Amount(1, 1, Units.Part, "equal parts") };
        }

        Unsaid.Clear();
    }

    /// <summary>The spec, with what the maker did not name taken from the method or from what is usual.</summary>
    public Spec Made()
    {
        var method = MethodText.Of(string.Join(' ', Method), Lines);
        var glass = Glass ?? GlassText.In(method.Written);
        var iceWritten = Ice ?? IceText.In(method.Written);
        return new Spec
        {
            Title = Title,
            Lines = Lines,
            Method = method,
            Glass = glass,
            Ice = (iceWritten.Length > 0 ? IceText.Of(iceWritten) : null) ?? IceText.Usual(glass, method.Technique),
            IceWritten = iceWritten,
            Garnish = Garnish ?? GarnishText.In(string.Join(". ", Method)),
            Credit = Credit,
            Notes = Notes,
            OwnRecipes = OwnRecipes,
            PartMl = PartMl,
        };
    }
}

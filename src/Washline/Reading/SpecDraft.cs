using Washline.Drinks;

namespace Washline.Reading;

/// <summary>A spec while its lines are being read.</summary>
internal sealed class SpecDraft
{
    public SourceLine? TitleLine { get; set; }

    public SourceLine? First { get; set; }

    public string Title { get; set; } = "";

    public List<Line> Lines { get; } = [];

    public List<Origin> Origins { get; } = [];

    public bool HasIngredientLines { get; set; }

    public List<string> Method { get; } = [];

    public string? Ice { get; set; }

    public string? Glass { get; set; }

    public List<string>? Garnish { get; set; }

    public List<string> Notes { get; } = [];

    public Credit Credit { get; set; } = Credit.Unknown;

    public double PartMl { get; set; } = Amount.UsualPartMl;

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
            Garnish = Garnish ?? GarnishText.In(method.Written),
            Credit = Credit,
            Notes = Notes,
            PartMl = PartMl,
        };
    }
}

using Washline.Drinks;

namespace Washline.Reading.Speech;

/// <summary>One ingredient with its amount as it came up in a talk.</summary>
internal sealed class Told
{
    public required SaidAmount Amount { get; set; }

    public required Slot Slot { get; set; }

    public required Line Line { get; set; }

    /// <summary>What the written reader had to say about it.</summary>
    public IReadOnlyList<Problem> Problems { get; set; } = [];

    /// <summary>The first word of amount and ingredient, and the word behind both.</summary>
    public int Start { get; init; }

    public int End { get; set; }

    /// <summary>The first word of whichever of the two came last, when it was told.</summary>
    public int Head { get; init; }

    /// <summary>The word behind both, when it was told.</summary>
    public int Tail { get; init; }

    /// <summary>Whether the speaker takes something back right before.</summary>
    public bool Corrects { get; init; }

    /// <summary>Taken back.</summary>
    public bool TakenBack { get; set; }

    /// <summary>Whether its amount was mended by what came after.</summary>
    public bool Mended { get; set; }

    /// <summary>What the speaker uses instead; empty when it is what the spec calls for.</summary>
    public string Used { get; set; } = "";

    /// <summary>Other things said of it.</summary>
    public List<string> Notes { get; } = [];

    /// <summary>Stretches of words it was read from, in order.</summary>
    public List<(int From, int To)> Stretches { get; } = [];

    /// <summary>The amount stands in front of the ingredient, or behind it.</summary>
    public bool Behind { get; init; }

    public Kind? Kind => Line.Kind;

    /// <summary>
    /// How sure the reading is: 1 when amount, unit and a name of the catalogue are said in one breath; each thing that had to be concluded takes its share.
    /// </summary>
    public double Confidence
    {
        get
        {
            var sure = 1.0;
            if (Amount.Carried) sure *= 0.9;
            if (Behind) sure *= 0.95;
            if (Mended) sure *= 0.95;
            if (Slot.Mended is not null) sure *= 0.85 - Slot.Apart;
            if (Kind is null) sure *= 0.5;
            if (Used.Length > 0) sure *= 0.9;
            return Math.Round(sure, 2);
        }
    }
}

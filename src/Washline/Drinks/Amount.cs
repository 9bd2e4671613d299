using Washline.Measures;

namespace Washline.Drinks;

/// <summary>What is written: a number, perhaps a range, and a unit. Kept for ever; a volume is what it means.</summary>
/// <param name="Low">The least, more than 0 (1 for a bare <c>top up</c>, and where no amount is written).</param>
/// <param name="High">The most; the same as <paramref name="Low"/> unless a range is written.</param>
/// <param name="Unit">The unit.</param>
/// <param name="Written">The words as they were written, such as <c>1½ oz</c> or <c>2–3 dashes</c>.</param>
public sealed record Amount(double Low, double High, Unit Unit, string Written)
{
    /// <summary>Millilitres one part stands for unless the spec says otherwise: a US ounce poured as 30 mL. Common practice, no source.</summary>
    public const double UsualPartMl = 30;

    /// <summary>No amount is written.</summary>
    public static Amount Unsaid { get; } = new(1, 1, Units.Unsaid, "");

    /// <summary>The middle of what is written.</summary>
    public double Middle => (Low + High) / 2;

    /// <summary>What it means in millilitres for an ingredient of that kind.</summary>
    /// <param name="kind">The ingredient, for pieces.</param>
    /// <param name="partMl">Millilitres a part stands for.</param>
    /// <returns>Nothing for a piece or a weight of something that has no size here, for a top-up, which the glass decides, and where no amount is written.</returns>
    public Band? Millilitres(Kind? kind, double partMl = UsualPartMl) => Unit.Kind switch
    {
        UnitKind.TopUp or UnitKind.Unsaid => null,
        // A shot of espresso is what one shot of the machine gives; a handful of a herb brings no more than its leaves.
        _ when kind?.Piece is { } own && (Unit.Name == "shot" && own.Words.Contains("shot") || Unit.Name == "handful" && own.Millilitres.High <= 0) => Of(own.Millilitres),
        UnitKind.Piece => kind?.Piece is { } piece ? Of(piece.Millilitres) : null,
        UnitKind.Weighed => kind?.MillilitresPerGram is { } room ? Of(room) : null,
        UnitKind.Part => Of(Band.Exactly(partMl)),
        _ => Of(Unit.Millilitres),
    };

    private Band Of(Band one) => new(Low * one.Low, Middle * one.Typical, High * one.High);
}

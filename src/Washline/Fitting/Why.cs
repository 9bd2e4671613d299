namespace Washline.Fitting;

/// <summary>Why a line is poured differently, in a bartender's words.</summary>
internal static class Why
{
    private const double Telling = 0.04; // share by which strength or sugar must differ to be named

    public static string Of(Slot slot, Slot.Option option, Mark mark)
    {
        var (asked, poured) = (slot.Asked, option.Item.Pour);
        var reasons = new List<string>();
        if (option.StandInJnd > 0) reasons.Add($"stands in for {asked.Kind.Name}{(option.Reason.Length > 0 ? $": {option.Reason}" : "")}");
        if (Differs(asked.Strength.Typical, poured.Strength.Typical, 1))
        {
            reasons.Add(FormattableString.Invariant($"{poured.Strength.Typical:0.#} % where {asked.Strength.Typical:0.#} % was meant"));
        }

        if (asked.Sugar.Typical + poured.Sugar.Typical > 50 && Differs(asked.Sugar.Typical, poured.Sugar.Typical, 10))
        {
            reasons.Add(FormattableString.Invariant($"{poured.Sugar.Typical:0} g/L sugar where {asked.Sugar.Typical:0} was meant"));
        }

        if (asked.Acid.Typical + poured.Acid.Typical > 10 && Differs(asked.Acid.Typical, poured.Acid.Typical, 2))
        {
            reasons.Add(FormattableString.Invariant($"{poured.Acid.Typical:0} g/L acid where {asked.Acid.Typical:0} was meant"));
        }

        if (!mark.IsMakers) reasons.Add(Amount(slot, option, mark));
        return string.Join("; ", reasons);
    }

    private static string Amount(Slot slot, Slot.Option option, Mark mark) =>
        mark.Millilitres > slot.AskedMl ? "more, to bring the drink back into balance"
        : option.Item.LeftMl < slot.AskedMl ? FormattableString.Invariant($"less, because only {option.Item.LeftMl:0.#} mL are left")
        : "less, to bring the drink back into balance";

    private static bool Differs(double a, double b, double least) => Math.Abs(a - b) >= least && Math.Abs(a - b) > Telling * Math.Max(a, b);
}

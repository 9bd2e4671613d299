using Washline.Drinks;
using Washline.Fitting.AtHome;

namespace Washline.Fitting;

/// <summary>Why a line is poured differently, in a bartender's words.</summary>
internal static class Why
{
    private const double Telling = 0.04; // share by which strength or sugar must differ to be named
    private const double Poured = 4; // mL; of less nobody measures a tenth

    public static string Of(Slot slot, Slot.Option option, Mark mark)
    {
        var (asked, poured) = (slot.Asked, option.Item.Pour);
        var reasons = new List<string>();
        if (option.StandInJnd > 0 || option.Reason.Length > 0) reasons.Add($"stands in for {asked.Kind.Name}{(option.Reason.Length > 0 ? $": {option.Reason}" : "")}");
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

        if (HomeMeasures.Why(slot.Line, mark) is { Length: > 0 } measured) reasons.Add(measured);
        if (!mark.IsMakers) reasons.Add(Amount(slot, option, mark));
        return string.Join("; ", reasons);
    }

    private static string Amount(Slot slot, Slot.Option option, Mark mark)
    {
        var more = mark.Millilitres > slot.AskedMl;
        if (!more && option.Item.LeftMl < slot.AskedMl) return FormattableString.Invariant($"less, because only {option.Item.LeftMl:0.#} mL are left");
        var word = more ? "more" : "less";
        return Makeup(slot.Asked, option.Item.Pour) is { } makeup && makeup.MoreOfIt == more
            ? FormattableString.Invariant($"{word}, for it is {makeup.Than}: {makeup.Ml:0.#} mL bring as much {makeup.Of} as {slot.AskedMl:0.#}")
            : $"{word}, to bring the drink back into balance";
    }

    // What the line is there for, and how much of the bottle brings as much of it.
    private static (bool MoreOfIt, string Than, string Of, double Ml)? Makeup(Pour asked, Pour poured)
    {
        var (a, b, of, less, more) = asked.Strength.Typical >= 15 ? (asked.Strength.Typical, poured.Strength.Typical, "alcohol", "weaker", "stronger")
            : asked.Sugar.Typical >= 200 ? (asked.Sugar.Typical, poured.Sugar.Typical, "sugar", "less sweet", "sweeter")
            : (asked.Acid.Typical, poured.Acid.Typical, "acid", "less sour", "sourer");
        return a <= 0 || b <= 0 || asked.Millilitres.Typical < Poured || !Differs(a, b, 0) ? null : (b < a, b < a ? less : more, of, asked.Millilitres.Typical * a / b);
    }

    private static bool Differs(double a, double b, double least) => Math.Abs(a - b) >= least && Math.Abs(a - b) > Telling * Math.Max(a, b);
}

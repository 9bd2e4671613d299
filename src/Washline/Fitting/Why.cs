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
        if (option.Split.Count > 0) return OfSplit(slot, option, mark);
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

    // Why one bottle is not enough, and what stands in for what was asked.
    private static string OfSplit(Slot slot, Slot.Option option, Mark mark)
    {
        var (asked, both) = (slot.Asked, option.Item.Pour);
        var (first, second) = (option.Split[0].Option.Item, option.Split[1].Option.Item);
        bool Below(Func<Pour, double> level) => level(first.Pour) < level(second.Pour);
        var (weak, strong) = Below(p => p.Strength.Typical) ? (first, second) : (second, first);
        var (thin, thick) = Below(p => p.Sugar.Typical) ? (first, second) : (second, first);
        var reasons = new List<string>
        {
            Marks.IsWhatIsLeft(option.Split[0].Mark) ? FormattableString.Invariant($"only {first.LeftMl:0.#} mL of {first.Name} are left: {second.Name} makes up the rest")
            : second.Kind.Id == Splits.Water ? FormattableString.Invariant($"{first.Pour.Strength.Typical:0.#} % alone would be stronger: water brings it down to {both.Strength.Typical:0.#} %")
            : asked.Kind.IsA("sweetener") ? FormattableString.Invariant($"{thin.Name} alone would be less sweet, {thick.Name} sweeter: together {both.Sugar.Typical:0} g/L sugar where {asked.Sugar.Typical:0} was meant")
            : FormattableString.Invariant($"{weak.Pour.Strength.Typical:0.#} % alone would be weaker: {strong.Name} brings it to {both.Strength.Typical:0.#} % where {asked.Strength.Typical:0.#} % was meant"),
        };
        reasons.AddRange(option.Split.Select(p => p.Option).Where(o => o.StandInJnd > 0 || o.Reason.Length > 0)
            .Select(o => $"{o.Item.Name} stands in for {asked.Kind.Name}{(o.Reason.Length > 0 ? $": {o.Reason}" : "")}"));
        var more = mark.Millilitres - slot.AskedMl;
        if (Math.Abs(more) > Marks.Near * slot.AskedMl) reasons.Add($"{(more > 0 ? "more" : "less")} in all, to bring the drink back into balance");
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

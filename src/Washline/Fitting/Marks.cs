using System.Globalization;
using Washline.Drinks;

namespace Washline.Fitting;

/// <summary>The amounts that can be measured at home near a maker's amount; the maker's own is always among them.</summary>
public static class Marks
{
    /// <summary>How near a mark a maker's amount must lie to be poured to that mark: two per cent, far inside what a jigger can do.</summary>
    public const double Near = 0.02;

    private const string Rest = "what is left";

    private static readonly Measure ByEye = new("by eye", "ml", 5, 5, 60);

    /// <summary>The marks for a line, least first.</summary>
    /// <param name="amount">The amount as written.</param>
    /// <param name="askedMl">What it means, mL.</param>
    /// <param name="measures">The measures at home.</param>
    /// <param name="leftMl">What is left in the bottle: nothing above it is offered.</param>
    /// <param name="ratio">How much more of this bottle brings as much spirit, sugar or acid: 1.6 where 63 % was meant and it has 40 %.</param>
    public static IReadOnlyList<Mark> For(Amount amount, double askedMl, IReadOnlyList<Measure> measures, double leftMl, double ratio = 1) =>
        For(amount, askedMl, measures, leftMl, Reach.Usual, ratio);

    internal static IReadOnlyList<Mark> For(Amount amount, double askedMl, IReadOnlyList<Measure> measures, double leftMl, Reach reach, double ratio)
    {
        var marks = amount.Unit.Kind switch
        {
            UnitKind.Poured or UnitKind.Part => Poured(amount, askedMl, measures, reach.Least * Math.Min(1, ratio), reach.Most * Math.Max(1, ratio)),
            UnitKind.Dashed when amount.Unit.Name is "dash" or "drop" => Counted(amount, askedMl, 1, 3),
            UnitKind.Spooned => Counted(amount, askedMl, 1, 2),
            _ => (IReadOnlyList<Mark>)[Makers(amount, askedMl)],
        };
        if (marks[^1].Millilitres <= leftMl + 1e-9) return marks;
        IReadOnlyList<Mark> within = [.. marks.Where(m => m.Millilitres <= leftMl + 1e-9)];
        return within.Count > 0 ? within : [WhatIsLeft(leftMl)];
    }

    /// <summary>The measure that a line would be poured with: one in the unit it is written in, if there is one.</summary>
    public static Measure Of(Amount amount, IReadOnlyList<Measure> measures) =>
        In(amount.Unit.Name, measures) ?? In(amount.Unit.Name == "oz" ? "oz" : "ml", measures) ?? (measures.Count > 0 ? measures[0] : ByEye);

    private static Measure? In(string unit, IReadOnlyList<Measure> measures)
    {
        for (var i = 0; i < measures.Count; i++)
        {
            if (measures[i].Unit == unit) return measures[i];
        }

        return null;
    }

    /// <summary>A number as bartenders write it: eighths and thirds as fractions for ounces, halves as decimals for millilitres.</summary>
    public static string Text(double value, string unit)
    {
        if (unit != "oz") return $"{Number(value)} {unit}";
        var whole = Math.Floor(value + 1e-9);
        var eighths = (int)Math.Round((value - whole) * 8);
        if (Math.Abs(value - whole - eighths / 8.0) > 0.01) return $"{Number(value)} oz";
        if (eighths == 8) (whole, eighths) = (whole + 1, 0);
        string[] fractions = ["", "⅛", "¼", "⅜", "½", "⅝", "¾", "⅞"];
        return $"{(whole > 0 || eighths == 0 ? whole.ToString(CultureInfo.InvariantCulture) : "")}{fractions[eighths]} oz";
    }

    /// <summary>All that is left of a bottle, mL: a mark that is no measure.</summary>
    internal static Mark WhatIsLeft(double ml) => new(ml, $"{Rest} ({Number(ml)} ml)", true, false);

    /// <summary>An amount in millilitres that is no mark of a measure.</summary>
    internal static Mark Measured(double ml) => new(Math.Max(0, ml), FormattableString.Invariant($"{ml:0.##} ml"), true, false);

    /// <summary>Whether a mark is what is left of a bottle.</summary>
    internal static bool IsWhatIsLeft(Mark mark) => mark.Text.StartsWith(Rest, StringComparison.Ordinal);

    private static IReadOnlyList<Mark> Poured(Amount amount, double askedMl, IReadOnlyList<Measure> measures, double least, double most)
    {
        var ladder = Ladder.Of(Of(amount, measures));
        if (ladder.Around(askedMl, askedMl * least, askedMl * most) is { } around) return around;
        var marks = new List<Mark>();
        marks.AddRange(ladder.Between(askedMl * least, askedMl * most));
        Insert(marks, Makers(amount, askedMl));
        return marks;
    }

    // The least first.
    private static void Insert(List<Mark> marks, Mark mark)
    {
        var at = marks.FindIndex(m => m.Millilitres > mark.Millilitres);
        marks.Insert(at < 0 ? marks.Count : at, mark);
    }

    private static List<Mark> Counted(Amount amount, double askedMl, int down, int up)
    {
        var one = askedMl / amount.Middle;
        var marks = new List<Mark> { Makers(amount, askedMl) };
        var from = Math.Max(1, (int)Math.Ceiling(amount.Middle) - down);
        for (var n = from; n <= Math.Floor(amount.Middle) + up; n++)
        {
            if (Math.Abs(n - amount.Middle) < 1e-9) continue;
            Insert(marks, new Mark(n * one, $"{n} {(n == 1 ? amount.Unit.Name : amount.Unit.Plural)}", false, false));
        }

        return marks;
    }

    private static Mark Makers(Amount amount, double askedMl) =>
        new(askedMl, amount.Unit.Kind == UnitKind.Part ? $"{Number(askedMl)} ml" : amount.Written, amount.Unit.Kind == UnitKind.Poured, true);

    private static string Number(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}

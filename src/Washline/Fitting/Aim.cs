using Washline.Drinks;
using Washline.Measures;

namespace Washline.Fitting;

/// <summary>What a search aims at: a drink, the lines that may be poured for it, and the limits it has to keep.</summary>
/// <param name="Sip">The drink, after what was wished of it.</param>
/// <param name="Slots">The lines.</param>
/// <param name="Allowed">The limits.</param>
/// <param name="IsBlocked">Whether a wish leaves a line without anything to pour.</param>
internal sealed record Aim(Sip Sip, IReadOnlyList<Slot> Slots, Allowed Allowed, bool IsBlocked)
{
    private const double Half = 0.5; // JND: what is kept, is kept so nearly that nobody tells

    /// <summary>The aim under those wishes.</summary>
    public static Aim Of(Sip meant, IReadOnlyList<Slot> slots, Wishes wishes, Settings settings)
    {
        if (wishes.IsNone) return new Aim(meant, slots, Allowed.Everything, false);
        var sip = meant;
        if (wishes.StepsDrier > 0)
        {
            var sweet = Jnd.Sugar.Level(Math.Max(0, Jnd.OfSugar(meant.SweetnessGPerL) - wishes.StepsDrier));
            sip = sip with { SweetnessGPerL = sweet, SugarGPerL = sip.SugarGPerL * sweet / Math.Max(1e-9, meant.SweetnessGPerL) };
        }

        var standard = StandardDrink.Of(settings.Country) ?? StandardDrink.All[0];
        var grams = wishes.MostStandardDrinks * standard.EthanolG ?? double.PositiveInfinity;
        // A lighter drink is aimed at as full as the maker's, and as strong as it may be then.
        sip = sip with { StrengthPercent = Math.Min(sip.StrengthPercent, grams * Meant.PercentPerGram / sip.VolumeMl) };
        var allowed = Allowed.Everything with { MostEthanolG = grams, MostPrice = (double?)wishes.Budget ?? double.PositiveInfinity };
        if (wishes.KeepVolume) allowed = allowed with { LowMl = meant.VolumeMl / Jnd.VolumeRatio(Half), HighMl = meant.VolumeMl * Jnd.VolumeRatio(Half) };
        if (wishes.KeepStrength)
        {
            var count = Jnd.OfStrength(meant.StrengthPercent);
            allowed = allowed with { LowPercent = Jnd.Strength.Level(Math.Max(0, count - Half)), HighPercent = Jnd.Strength.Level(count + Half) };
        }

        var (wished, blocked) = Narrowed(slots, wishes);
        return new Aim(sip, wished, allowed, blocked);
    }

    private static (IReadOnlyList<Slot> Slots, bool IsBlocked) Narrowed(IReadOnlyList<Slot> slots, Wishes wishes)
    {
        Slot.Option? Using(Slot slot, string name) => slot.Options.FirstOrDefault(o => Is(o, name)) ?? slot.Splits.Value.FirstOrDefault(o => Is(o, name));
        var usesUp = wishes.UseUp is not { } name ? null : slots.Where(s => Using(s, name) is not null).MinBy(s => Using(s, name)!.StandInJnd);
        var blocked = wishes.UseUp is not null && usesUp is null;
        IReadOnlyList<Slot> narrowed = [.. slots.Select(slot =>
        {
            Slot.Option[] Kept(IEnumerable<Slot.Option> options) => [.. options.Select(o => o with { Marks = Marks(slot, o, wishes, slot == usesUp) })
                .Where(o => o.Marks.Count > 0 && !o.Takes(b => wishes.RulesOut(b.Kind)) && (slot != usesUp || Is(o, wishes.UseUp!)))];
            if (Kept(slot.Options) is { Length: > 0 } options) return slot.With(options, new(() => Kept(slot.Splits.Value)));
            if (Kept(slot.Splits.Value) is { Length: > 0 } splits) return slot.With(splits);
            blocked = true;
            return slot;
        })];
        return (narrowed, blocked);
    }

    private static bool Is(Slot.Option option, string name) => option.Takes(b => b.Name.Equals(name, StringComparison.OrdinalIgnoreCase));

    private static IReadOnlyList<Mark> Marks(Slot slot, Slot.Option option, Wishes wishes, bool usesUp)
    {
        IReadOnlyList<Mark> marks = wishes.KeepLines.Contains(slot.Index) ? [.. option.Marks.Where(m => m.IsMakers)] : option.Marks;
        var left = option.Item.LeftMl;
        if (usesUp && option.Split.Count == 0 && left <= slot.AskedMl * Reach.Usual.Most * Math.Max(1, option.Ratio) && left >= marks.Min(m => m.Millilitres) && !wishes.KeepLines.Contains(slot.Index))
        {
            marks = [marks.FirstOrDefault(m => Math.Abs(m.Millilitres - left) <= Fitting.Marks.Near * left) ?? Fitting.Marks.WhatIsLeft(left)];
        }

        return wishes.OnlyMarks ? [.. marks.Where(m => !m.ByEye)] : marks;
    }
}

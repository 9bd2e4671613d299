using Washline.Drinks;

namespace Washline.Fitting.Guessing;

/// <summary>The amounts of one reading: per line what is poured, with its band.</summary>
/// <param name="Lines">Per line of the drink, in its order.</param>
/// <param name="Missed">Wishes that the drink could not follow.</param>
internal sealed record Amounts(IReadOnlyList<Amounts.Part> Lines, IReadOnlyList<string> Missed)
{
    // z of a normal distribution that leaves a tenth on either side.
    private const double Tenth = 1.2816;
    private const double MostMissed = 0.6; // JND

    /// <summary>One line.</summary>
    /// <param name="Likeness">What it is beside others.</param>
    /// <param name="Amount">As it is measured.</param>
    /// <param name="Millilitres">What that is, mL; 0 where it has no volume.</param>
    /// <param name="PriorMl">Before the balance was looked at, mL; 0 for what is counted.</param>
    /// <param name="ExactMl">Before it was brought to a mark, mL.</param>
    /// <param name="Spread">Standard deviation of ln(mL), widened; 0 for what is counted.</param>
    internal sealed record Part(Likeness Likeness, Amount Amount, double Millilitres, double PriorMl, double ExactMl, double Spread)
    {
        /// <summary>The low end of the band, mL.</summary>
        public double LowMl => ExactMl * Math.Exp(-Tenth * Spread);

        /// <summary>The high end of the band, mL.</summary>
        public double HighMl => ExactMl * Math.Exp(Tenth * Spread);

        /// <summary>How far it is expected to stand from the maker's, mL (mean of the absolute value of a normal).</summary>
        public double OffMl => Math.Sqrt(2 / Math.PI) * Spread * ExactMl;
    }

    /// <summary>The amounts of a drink of those kinds.</summary>
    public static Amounts Of(IReadOnlyList<Kind> kinds, Family family, Service service, Memory memory, Measure measure, Habits habits)
    {
        var all = Likeness.Of(kinds, family);
        var poured = all.Where(l => !Pieces.Counts(l.Kind)).ToList();
        var pieces = all.Where(l => Pieces.Counts(l.Kind)).ToDictionary(l => l, l => Pieces.Of(l.Kind, habits), (IEqualityComparer<Likeness>)ReferenceEqualityComparer.Instance);
        var fixedPours = pieces.Select(p => (p.Key.Kind, Ml: p.Value.Millilitres(p.Key.Kind)?.Typical ?? 0)).Where(p => p.Ml > 0).Select(p => Balance.Poured(p.Kind, p.Ml)).ToList();

        var settled = habits.Settle(poured, fixedPours, service, []);
        var wishes = Wish.Of(memory, settled.Sip);
        if (wishes.Count > 0) settled = habits.Settle(poured, fixedPours, service, [.. wishes.Select(w => w.Pull)]);
        var missed = wishes.Where(w => w.Missed(settled) > MostMissed).Select(w => w.Word).ToList();

        var steps = poured.Select(l => Rounding.Steps(l.Kind, measure)).ToList();
        var amounts = Rounding.Of(settled, [.. poured.Select(l => l.Kind)], steps);
        var spread = settled.Spread();
        var prior = poured.Count == 0 ? [] : habits.Prior.Of(poured).Mean;
        return new Amounts([.. all.Select(l =>
        {
            if (pieces.TryGetValue(l, out var piece)) return new Part(l, piece, piece.Millilitres(l.Kind)?.Typical ?? 0, 0, piece.Millilitres(l.Kind)?.Typical ?? 0, 0);
            var i = poured.FindIndex(p => ReferenceEquals(p, l));
            return new Part(l, amounts[i], amounts[i].Millilitres(l.Kind)!.Value.Typical, Math.Exp(prior[i]), Math.Exp(settled.Log[i]), spread[i] * habits.Widen);
        })], missed);
    }
}

namespace Washline.Fitting;

/// <content>What else could be poured, what would close the gap, and whether the answer stands.</content>
public sealed partial record Fit
{
    private const int MostAlternatives = 5;
    private const double StillWorthIt = 1.5; // JND beyond the closest: farther off nobody would choose it
    private const double WorthSaying = 0.25; // JND gained

    /// <summary>
    /// Up to five really different ways, nearest first: each pours another bottle somewhere, and for those bottles nothing on the marks at hand is nearer. None stands more than 1.5 JND beyond
    /// the closest. Computed each time it is asked for.
    /// </summary>
    public IReadOnlyList<Offer> Alternatives()
    {
        if (Closest is null) return [];
        static string Bottles(Offer o) => string.Join('\n', o.Lines.Select(l => l.Pour.Name));
        var seen = new HashSet<string> { Bottles(Closest) };
        var found = new List<Offer>();
        IReadOnlyList<Offer> from = [Closest];
        var poured = Poured;
        // First every other bottle beside the closest, then beside what was found so.
        for (var round = 0; round < 2 && found.Count < MostAlternatives; round++)
        {
            var next = new List<Offer>();
            foreach (var offer in from)
            {
                for (var i = 0; i < poured.Count; i++)
                {
                    var slot = poured[i].With([.. poured[i].Options.Where(o => o.Item.Name != offer.Lines[i].Pour.Name)]);
                    if (slot.Options.Length == 0) continue;
                    if (Search(With(poured, i, slot)).Best(Wishes.MostChanges ?? int.MaxValue, Closest.DistanceJnd + StillWorthIt).Choices is { } choices && Offer(choices) is var other && seen.Add(Bottles(other)))
                        next.Add(other);
                }
            }

            found.AddRange(next);
            from = [.. next.OrderBy(o => o.DistanceJnd).Take(2)];
        }

        return [.. found.OrderBy(o => o.DistanceJnd).ThenBy(Bottles, StringComparer.Ordinal).Take(MostAlternatives)];
    }

    /// <summary>
    /// What would close the gap, what helps most first: a bottle as the spec asks for it, on the best of the lines; and the one amount that, changed alone, brings the straight pour nearest. Only
    /// what gains a quarter of a JND. Computed each time it is asked for.
    /// </summary>
    public IReadOnlyList<Closing> Closings()
    {
        if (Closest is null || Straight is null) return [];
        return [.. new[] { Bottle(Closest), OneAmount(Straight) }.OfType<Closing>().OrderBy(c => c.DistanceJnd)];
    }

    /// <summary>Whether the answer stands for the keenest taster too, and at either end of what is not certain. Computed each time it is asked for.</summary>
    public Standing? Standing() => Closest is null || Straight is null ? null : Fitting.Standing.Of(this, Closest, Straight);

    private static IReadOnlyList<Slot> With(IReadOnlyList<Slot> slots, int line, Slot other) => [.. slots.Select((s, i) => i == line ? other : s)];

    private Closing? Bottle(Offer closest)
    {
        var (poured, best) = (Poured, (Closing?)null);
        foreach (var (i, slot) in poured.Index())
        {
            var option = slot.Named(closest.Lines[i].Pour.Name, closest.Lines[i].Mark.Millilitres)!;
            if (option.StandInJnd <= 0 && Math.Abs(option.Ratio - 1) < 0.03) continue;
            var asked = new ShelfItem(slot.Asked.Kind.Name, slot.Asked with { Millilitres = default, Line = null }, double.MaxValue);
            var ideal = slot.With([new Slot.Option(asked, 0, "", 1, 1, Fitting.Marks.For(slot.Line.Amount, slot.AskedMl, Mise.Measures, double.MaxValue))]);
            var (choices, d) = Search(With(poured, i, ideal)).Best(Wishes.MostChanges ?? int.MaxValue, closest.DistanceJnd - WorthSaying);
            if (choices is not null && (best is null || d < best.DistanceJnd)) best = new Closing($"with {Slots.Buy(slot.Line, slot.Asked)}", d, slot.Index);
        }

        return best;
    }

    private Closing? OneAmount(Offer straight)
    {
        var slots = Mise.Slots;
        var search = Search(slots);
        var choices = slots.Select((s, i) => new Choice(s.Named(straight.Lines[i].Pour.Name, straight.Lines[i].Mark.Millilitres)!, straight.Lines[i].Mark)).ToArray();
        var best = (Closing?)null;
        for (var i = 0; i < choices.Length; i++)
        {
            var was = choices[i];
            foreach (var mark in was.Option.Marks)
            {
                if (mark == was.Mark) continue;
                choices[i] = was with { Mark = mark };
                var d = search.Distance(choices);
                if (d > straight.DistanceJnd - WorthSaying || d >= (best?.DistanceJnd ?? double.PositiveInfinity)) continue;
                best = new Closing($"{mark.Text} {was.Option.Item.Name} instead of {was.Mark.Text}, all else as written", d, slots[i].Index);
            }

            choices[i] = was;
        }

        return best;
    }
}

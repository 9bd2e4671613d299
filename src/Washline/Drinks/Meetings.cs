using Washline.Mixtures;

namespace Washline.Drinks;

/// <summary>Up to four drinks, much like one another and made the same way, chilled side by side.</summary>
internal static class Meetings
{
    /// <summary>How many go over the ice at once, in the time of one.</summary>
    public const int Most = 4;

    /// <summary>What each of them is when it has been on the ice for the service's time. The first sets the pace of the steps: it comes out as if it were alone, the others within their accuracy.</summary>
    /// <param name="drinks">What goes in first and what goes in last, one to four of them.</param>
    /// <param name="service">How they are made.</param>
    /// <param name="chilled">Room for as many.</param>
    public static void After(ReadOnlySpan<(Mixture First, Mixture Last)> drinks, Service service, Span<Chilled> chilled)
    {
        Span<Meeting> meetings = stackalloc Meeting[Most];
        var happens = service.Technique != Technique.Blend && drinks.Length > 1;
        for (var k = 0; k < Most; k++)
        {
            var (first, last) = drinks[Math.Min(k, drinks.Length - 1)];
            meetings[k] = Meeting.Of(first, service.InGlass ? last : Mixture.Empty, service, service.IceWet ?? true);
            happens &= meetings[k].Happens;
        }

        if (!happens)
        {
            for (var k = 0; k < drinks.Length; k++) chilled[k] = meetings[k].After(service.Seconds);
            return;
        }

        var run = IceRun.Beside(meetings[0].Begin(), meetings[1].Begin(), meetings[2].Begin(), meetings[3].Begin());
        run.Advance(service.Seconds);
        for (var k = 0; k < drinks.Length; k++) chilled[k] = run.After(meetings[k].Drink, k);
    }
}

using Washline.Measures;
using Washline.Mixtures;

namespace Washline.Drinks;

/// <summary>A drink after method and ice, with its bands, its swings and its wash line.</summary>
public sealed record ServedDrink
{
    /// <summary>What went in.</summary>
    public required IReadOnlyList<Pour> Pours { get; init; }

    /// <summary>How it was served.</summary>
    public required Service Service { get; init; }

    /// <summary>What is in it, in grams, before the ice and in the glass.</summary>
    public required Serving Serving { get; init; }

    /// <summary>Before ice, at room temperature.</summary>
    public required Sip Built { get; init; }

    /// <summary>At the first sip.</summary>
    public required Sip Served { get; init; }

    /// <summary>The low end of each number, one by one.</summary>
    public required Sip Low { get; init; }

    /// <summary>The high end of each number, one by one.</summary>
    public required Sip High { get; init; }

    /// <summary>Water from the ice, mL, with its band. Negative when very cold ice froze some of the drink.</summary>
    public required Band Melt { get; init; }

    /// <summary>Water from the ice in per cent of the volume that met it, with its band.</summary>
    public required Band Dilution { get; init; }

    /// <summary>Water from the ice, mL.</summary>
    public double MeltMl => Melt.Typical;

    /// <summary>Water from the ice in per cent of the volume that met it.</summary>
    public double DilutionPercent => Dilution.Typical;

    /// <summary>What is uncertain, what moves the drink most first.</summary>
    public required IReadOnlyList<Swing> Swings { get; init; }

    /// <summary>Where it stands in its glass.</summary>
    public required WashLine WashLine { get; init; }

    /// <summary>Grams of ethanol in it.</summary>
    public required double EthanolG { get; init; }

    /// <summary>Grams of ice that are still ice at the first sip of a drink that is drunk with it; nil for any other. Computed each time it is asked for.</summary>
    public double IceDrunkG => !Service.DrunkWithIce ? 0
        : Meeting.Of(Sum(Pours, last: false), Sum(Pours, last: true), Service, Service.IceWet ?? true).After(Service.Seconds).IceLeftG;

    /// <summary>How what meets the ice cools and thins with time. Computed each time it is asked for.</summary>
    public ChillCourse Course
    {
        get
        {
            var meeting = Meeting.Of(Sum(Pours, last: false), Sum(Pours, last: true), Service, Service.IceWet ?? true);
            return ChillCourse.Of(meeting.Technique, meeting.Drink, meeting.StartC, meeting.Ice, Service.Seconds, meeting.Rate);
        }
    }

    /// <summary>A spec as its maker wrote it, in that glass or in the one its words name; lines of unknown kind are left out.</summary>
    /// <param name="spec">The spec.</param>
    /// <param name="iceWet">Wet ice, from the freezer, or not said.</param>
    /// <param name="glass">A glass at home; none for the usual size of the maker's.</param>
    /// <param name="hand">A hand that has been measured; none for the calibrated rates.</param>
    public static ServedDrink Of(Spec spec, bool? iceWet, Glass? glass = null, Hand? hand = null)
    {
        var service = Service.Of(spec, glass ?? TradeGlasses.For(spec.Glass, spec.Ice, spec.Method.Technique), iceWet) with { Hand = hand ?? Hand.Unknown };
        return Of(Written.Pours(spec, service), service);
    }

    /// <summary>Those pours, served that way.</summary>
    public static ServedDrink Of(IReadOnlyList<Pour> pours, Service service)
    {
        var spread = Spread.Of(pours, service);
        var (serving, iced, low, high) = (spread.Serving, spread.Middle, spread.Low, spread.High);
        return new ServedDrink
        {
            Pours = pours,
            Service = service,
            Built = new Serving(serving.Built, serving.Built, 20, 0, 0).Sip,
            Served = iced.Sip,
            Serving = serving,
            Low = low.Sip,
            High = high.Sip,
            Melt = new Band(low.MeltMl, iced.MeltMl, high.MeltMl),
            Dilution = new Band(low.DilutionPercent, iced.DilutionPercent, high.DilutionPercent),
            Swings = spread.Swings,
            WashLine = WashLine.Of(serving, service.Glass, Foam.Head(pours, service, serving.Served.Volume.Millilitres)),
            EthanolG = serving.Served.Ethanol,
        };
    }

    /// <summary>Those pours, served that way, without bands: what a search asks for many times.</summary>
    public static Serving Run(IReadOnlyList<Pour> pours, Service service) =>
        Serving.Of(Sum(pours, last: false), Sum(pours, last: true), service, service.IceWet ?? true, service.Seconds);

    internal static Mixture Sum(IReadOnlyList<Pour> pours, bool last)
    {
        var sum = Mixture.Empty;
        foreach (var pour in pours)
        {
            if (pour.Last == last) sum += pour.Mixture;
        }

        return sum;
    }
}

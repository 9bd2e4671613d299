using Washline.Measures;
using Washline.Mixtures;

namespace Washline.Drinks;

/// <summary>A drink after method and ice, with its bands, its swings and its wash line.</summary>
public sealed record ServedDrink
{
    private readonly Lazy<Spread> spread;

    private ServedDrink(IReadOnlyList<Pour> pours, Service service)
    {
        (Pours, Service) = (pours, service);
        var (first, last) = (Sum(pours, last: false), Sum(pours, last: true));
        Serving = Serving.Of(first, last, service, service.IceWet ?? true, service.Seconds);
        Served = Serving.Sip;
        Iced = Iced.Of(Serving, first, service);
        Built = new Serving(Serving.Built, Serving.Built, 20, 0, 0).Sip;
        WashLine = WashLine.Of(Serving, service.Glass, Foam.Head(pours, service, Serving.Served.Volume.Millilitres));
        spread = new(() => Spread.Of(pours, service));
    }

    /// <summary>What went in.</summary>
    public IReadOnlyList<Pour> Pours { get; }

    /// <summary>How it was served.</summary>
    public Service Service { get; }

    /// <summary>What is in it, in grams, before the ice and in the glass.</summary>
    public Serving Serving { get; }

    /// <summary>Before ice, at room temperature.</summary>
    public Sip Built { get; }

    /// <summary>At the first sip.</summary>
    public Sip Served { get; }

    /// <summary>The low end of each number, one by one. Bands and swings are computed when the first of them is asked for.</summary>
    public Sip Low => spread.Value.Low.Sip;

    /// <summary>The high end of each number, one by one.</summary>
    public Sip High => spread.Value.High.Sip;

    /// <summary>Water from the ice, mL, with its band. Negative when very cold ice froze some of the drink.</summary>
    public Band Melt => new(spread.Value.Low.MeltMl, MeltMl, spread.Value.High.MeltMl);

    /// <summary>Water from the ice in per cent of the volume that met it, with its band.</summary>
    public Band Dilution => new(spread.Value.Low.DilutionPercent, DilutionPercent, spread.Value.High.DilutionPercent);

    /// <summary>Water from the ice, mL.</summary>
    public double MeltMl => Iced.MeltMl;

    /// <summary>Water from the ice in per cent of the volume that met it.</summary>
    public double DilutionPercent => Iced.DilutionPercent;

    /// <summary>What is uncertain, what moves the drink most first.</summary>
    public IReadOnlyList<Swing> Swings => spread.Value.Swings;

    /// <summary>Where it stands in its glass.</summary>
    public WashLine WashLine { get; }

    /// <summary>Grams of ethanol in it.</summary>
    public double EthanolG => Serving.Served.Ethanol;

    private Iced Iced { get; }

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
    public static ServedDrink Of(IReadOnlyList<Pour> pours, Service service) => new(pours, service);

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

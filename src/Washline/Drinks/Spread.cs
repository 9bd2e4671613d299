using Washline.Measures;
using Washline.Mixtures;

namespace Washline.Drinks;

/// <summary>How far the numbers of a served drink may be off, and what makes them so.</summary>
/// <remarks>
/// First order: each uncertain input is set to its low and its high end in turn, the moves are added as squares. The model of the
/// chilling has its own share (docs/physics.md, one standard deviation: dilution 0.05 shaken, 0.08 stirred, 0.12 built or crushed, 0.06 blended).
/// </remarks>
internal sealed class Spread
{
    private const double WorthNaming = 0.15; // JND; below that nobody would taste for it

    private readonly double[] down = new double[8];
    private readonly double[] up = new double[8];
    private readonly Iced middle;
    private readonly List<Swing> swings = [];

    private Spread(Iced middle) => this.middle = middle;

    public Iced Low => Shift(down, -1);

    public Iced High => Shift(up, 1);

    public IReadOnlyList<Swing> Swings => [.. swings.Where(s => s.Jnd >= WorthNaming).OrderByDescending(s => s.Jnd).Take(6)];

    public static Spread Of(IReadOnlyList<Pour> pours, Service service, Iced middle)
    {
        var spread = new Spread(middle);
        if (middle.Sip.VolumeMl <= 0) return spread;
        var wet = service.IceWet ?? true;
        Iced Served(IReadOnlyList<Pour> changed, double seconds, bool ice) =>
            Iced.Of(ServedDrink.Sum(changed, false), ServedDrink.Sum(changed, true), service, ice, seconds);

        for (var i = 0; i < pours.Count; i++)
        {
            var pour = pours[i];
            void Try(string what, Band band, Func<double, Pour> change)
            {
                if (band.IsExact) return;
                Iced At(double value) => Served([.. pours.Take(i), change(value), .. pours.Skip(i + 1)], service.Seconds, wet);
                spread.Add($"{pour.Kind.Name}, {what}", At(band.Low), At(band.High));
            }

            Try("how much", pour.Millilitres, ml => pour with { Millilitres = Band.Exactly(ml) });
            Try("strength", pour.Strength, s => pour.With(s, null, null));
            Try("sugar", pour.Sugar, s => pour.With(null, s, null));
            Try("acid", pour.Acid, a => pour.With(null, null, a));
        }

        if (service.Technique == Technique.NoIce) return spread;
        var error = ChillingError.Of(service.Technique, service.Hand);
        if (error.TimeShare > 0)
        {
            spread.Add(TimeWords(service), Served(pours, service.Seconds * (1 - error.TimeShare), wet), Served(pours, Math.Min(Service.MostSeconds, service.Seconds * (1 + error.TimeShare)), wet));
        }

        if (service.Hand.Of(service.Technique) is { } factor)
        {
            Iced By(double rate) => Iced.Of(ServedDrink.Sum(pours, false), ServedDrink.Sum(pours, true), service with { Hand = service.Hand.With(service.Technique, Band.Exactly(rate)) }, wet, service.Seconds);
            spread.Add($"your own {(service.Technique == Technique.Shake ? "shake" : "stir")}, as measured", By(factor.Low), By(factor.High));
        }

        if (service.IceWet is null) spread.Add("ice, wet or straight from the freezer", Served(pours, service.Seconds, false), middle);
        spread.AddModel(error, middle.MetMl);
        return spread;
    }

    private static string TimeWords(Service service) => service.Technique switch
    {
        Technique.Shake or Technique.Stir when service.AsYou => "how long it is on the ice",
        Technique.Shake => "how long and hard you shake",
        Technique.Stir => "how long and fast you stir",
        _ => "how long it stands on the ice",
    };

    private void AddModel(ChillingError error, double metMl)
    {
        var (water, kelvin) = (error.Dilution * metMl, error.Kelvin);
        Iced Thinned(double ml, double dt)
        {
            var sip = middle.Sip;
            var by = sip.VolumeMl / (sip.VolumeMl + ml);
            return new Iced(
                new Sip(sip.VolumeMl + ml, sip.StrengthPercent * by, sip.SugarGPerL * by, sip.SweetnessGPerL * by, sip.AcidGPerL * by, sip.TemperatureC + dt),
                middle.MeltMl + ml, middle.MetMl);
        }

        Widen(Thinned(-Math.Min(water, middle.Sip.VolumeMl * 0.5), kelvin), Thinned(water, -kelvin));
    }

    private void Add(string input, Iced a, Iced b)
    {
        Widen(a, b);
        var moves = a.Sip.To(b.Sip);
        var (name, jnd) = moves.Largest;
        swings.Add(new Swing(input, name, Math.Abs(jnd) / 2));
    }

    private void Widen(Iced a, Iced b)
    {
        var m = Numbers(middle);
        var x = Numbers(a);
        var y = Numbers(b);
        for (var i = 0; i < m.Length; i++)
        {
            var below = Math.Max(0, m[i] - Math.Min(x[i], y[i]));
            var above = Math.Max(0, Math.Max(x[i], y[i]) - m[i]);
            down[i] += below * below;
            up[i] += above * above;
        }
    }

    private Iced Shift(double[] squares, int sign)
    {
        var m = Numbers(middle);
        for (var i = 0; i < m.Length; i++)
        {
            m[i] += sign * Math.Sqrt(squares[i]);
            if (i < 5) m[i] = Math.Max(0, m[i]);
        }

        return new Iced(new Sip(m[0], Math.Min(100, m[1]), m[2], m[3], m[4], m[5]), m[6], middle.MetMl) { DilutionPercent = m[7] };
    }

    private static double[] Numbers(Iced drink)
    {
        var sip = drink.Sip;
        return [sip.VolumeMl, sip.StrengthPercent, sip.SugarGPerL, sip.SweetnessGPerL, sip.AcidGPerL, sip.TemperatureC, drink.MeltMl, drink.DilutionPercent];
    }
}

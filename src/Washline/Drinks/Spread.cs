using System.Runtime.Intrinsics;
using Washline.Measures;
using Washline.Mixtures;

namespace Washline.Drinks;

/// <summary>How far the numbers of a served drink may be off, and what makes them so.</summary>
/// <remarks>
/// First order: each uncertain input is set to its low and its high end in turn, the moves are added as squares. What the drink then holds is computed in full; its melt and
/// temperature answer by slopes (<see cref="Response"/>). The model of the chilling has its own share (<see cref="ChillingError"/>).
/// </remarks>
internal sealed class Spread
{
    private const double WorthNaming = 0.15; // JND; below that nobody would taste for it
    private const double ColdestC = -60; // no drink is told colder, and no band either
    private const int MostSwings = 6;

    // Squares of how far each number goes below and above.
    private Vector512<double> down;
    private Vector512<double> up;
    private readonly Service service;
    private readonly Mixture first;
    private readonly Mixture last;
    private readonly Response response;
    private readonly List<(Pour? Pour, string What, string Attribute, double Jnd)> moves = [];

    private Spread(IReadOnlyList<Pour> pours, Service service)
    {
        this.service = service;
        first = ServedDrink.Sum(pours, last: false);
        last = ServedDrink.Sum(pours, last: true);
        response = Response.Of(first, last, service);
        Middle = Iced.Of(Serving.Of(first, last, service, response.Middle), first, service);
    }

    /// <summary>The drink as it is typically, at the first sip.</summary>
    public Iced Middle { get; }

    public Iced Low => Shift(down, -1);

    public Iced High => Shift(up, 1);

    /// <summary>What moves the drink most first.</summary>
    public IReadOnlyList<Swing> Swings { get; private set; } = [];

    public static Spread Of(IReadOnlyList<Pour> pours, Service service)
    {
        var spread = new Spread(pours, service);
        if (spread.Middle.Sip.VolumeMl <= 0) return spread;
        for (var i = 0; i < pours.Count; i++) spread.AddPour(pours[i]);
        spread.AddIce();
        spread.Name();
        return spread;
    }

    private void Name()
    {
        moves.Sort((a, b) => b.Jnd.CompareTo(a.Jnd));
        var swings = new Swing[Math.Min(MostSwings, moves.Count)];
        for (var i = 0; i < swings.Length; i++)
        {
            var (pour, what, attribute, jnd) = moves[i];
            swings[i] = new Swing(pour is null ? what : $"{pour.Kind.Name}, {what}", attribute, jnd);
        }

        Swings = swings;
    }

    private void AddPour(Pour pour)
    {
        var litre = pour.Composition.Litre;
        var (ml, strength, sugar, acid) = (pour.Millilitres, pour.Strength, pour.Sugar, pour.Acid);
        if (!ml.IsExact) Add(pour, "how much", At(pour, litre * ((ml.Low - ml.Typical) / 1000)), At(pour, litre * ((ml.High - ml.Typical) / 1000)));
        var solid = pour.Kind.Is("solid");
        if (!strength.IsExact) Add(pour, "strength", With(pour, solid, strength.Low, sugar.Typical, acid.Typical), With(pour, solid, strength.High, sugar.Typical, acid.Typical));
        if (!sugar.IsExact) Add(pour, "sugar", With(pour, solid, strength.Typical, sugar.Low, acid.Typical), With(pour, solid, strength.Typical, sugar.High, acid.Typical));
        if (!acid.IsExact) Add(pour, "acid", With(pour, solid, strength.Typical, sugar.Typical, acid.Low), With(pour, solid, strength.Typical, sugar.Typical, acid.High));
    }

    private void AddIce()
    {
        if (service.Technique == Technique.NoIce) return;
        var error = ChillingError.Of(service.Technique, service.Hand);
        if (error.TimeShare > 0) Add(null, TimeWords(service), After(response.Sooner), After(response.Later));
        if (service.Hand.Of(service.Technique) is { } factor)
        {
            Add(null, $"your own {(service.Technique == Technique.Shake ? "shake" : "stir")}, as measured", By(factor.Low), By(factor.High));
        }

        if (service.IceWet is null) Add(null, "ice, wet or straight from the freezer", After(response.Freezer), Middle);
        AddModel(error);
    }

    private Iced By(double rate)
    {
        var hand = service.Hand.With(service.Technique, Band.Exactly(rate));
        return After(Meeting.Of(first, last, service with { Hand = hand }, service.IceWet ?? true).After(service.Seconds));
    }

    // What does not go into a litre stays as it is.
    private Iced With(Pour pour, bool solid, double strength, double sugar, double acid)
    {
        var litre = pour.Composition.Litre;
        var other = solid ? pour.With(strength, sugar, acid).Composition.Litre : pour.Kind.LitreNear(litre, strength, sugar, acid) ?? litre;
        return At(pour, (other + litre * -1) * (pour.Millilitres.Typical / 1000));
    }

    private Iced At(Pour pour, in Mixture more)
    {
        var (a, b) = pour.Last ? (first, last + more) : (first + more, last);
        return Iced.Of(a, b, service, response.For(a, b, service));
    }

    private Iced After(in Chilled chilled) => Iced.Of(first, last, service, chilled);

    private static string TimeWords(Service service) => service.Technique switch
    {
        Technique.Shake or Technique.Stir when service.AsYou => "how long it is on the ice",
        Technique.Shake => "how long and hard you shake",
        Technique.Stir => "how long and fast you stir",
        _ => "how long it stands on the ice",
    };

    private void AddModel(ChillingError error)
    {
        var water = error.Dilution * Middle.MetMl;
        Widen(Thinned(-Math.Min(water, Middle.Sip.VolumeMl * 0.5), error.Kelvin), Thinned(water, -error.Kelvin));
    }

    private Iced Thinned(double ml, double kelvin)
    {
        var sip = Middle.Sip;
        var by = sip.VolumeMl / (sip.VolumeMl + ml);
        return new Iced(
            new Sip(sip.VolumeMl + ml, sip.StrengthPercent * by, sip.SugarGPerL * by, sip.SweetnessGPerL * by, sip.AcidGPerL * by, sip.TemperatureC + kelvin),
            Middle.MeltMl + ml, Middle.MetMl);
    }

    private void Add(Pour? pour, string what, in Iced a, in Iced b)
    {
        Widen(a, b);
        var (attribute, jnd) = a.Sip.To(b.Sip).Largest;
        if (Math.Abs(jnd) / 2 >= WorthNaming) moves.Add((pour, what, attribute, Math.Abs(jnd) / 2));
    }

    private void Widen(in Iced a, in Iced b)
    {
        var (middle, x, y) = (Numbers(Middle), Numbers(a), Numbers(b));
        var below = Vector512.Max(Vector512<double>.Zero, middle - Vector512.Min(x, y));
        var above = Vector512.Max(Vector512<double>.Zero, Vector512.Max(x, y) - middle);
        down += below * below;
        up += above * above;
    }

    private Iced Shift(Vector512<double> squares, int sign)
    {
        var m = Numbers(Middle) + Vector512.Sqrt(squares) * sign;
        static double NotBelowNought(double number) => Math.Max(0, number);
        return new Iced(
            new Sip(NotBelowNought(m[0]), Math.Clamp(m[1], 0, 100), NotBelowNought(m[2]), NotBelowNought(m[3]), NotBelowNought(m[4]), Math.Clamp(m[5], ColdestC, -ColdestC)),
            m[6], Middle.MetMl)
        {
            DilutionPercent = m[7],
        };
    }

    private static Vector512<double> Numbers(in Iced drink)
    {
        var sip = drink.Sip;
        return Vector512.Create(sip.VolumeMl, sip.StrengthPercent, sip.SugarGPerL, sip.SweetnessGPerL, sip.AcidGPerL, sip.TemperatureC, drink.MeltMl, drink.DilutionPercent);
    }
}

using Washline.Drinks;

namespace Washline.Fitting.AtHome;

/// <summary>What doing it another way does to a drink: the maker's own ingredients, served both ways.</summary>
/// <param name="Meant">The drink without the change.</param>
/// <param name="AtHome">The drink with it.</param>
public sealed record Consequence(ServedDrink Meant, ServedDrink AtHome)
{
    private const double Shown = 0.1; // JND; what a recipe's sugar and acid must move by to be worth a number

    /// <summary>Attribute by attribute, in signed JND.</summary>
    public Moves Moves => Meant.Served.To(AtHome.Served);

    /// <summary>All of it together, JND, but for flavour and stand-ins: they are the same both ways.</summary>
    public double DistanceJnd => Math.Sqrt(Moves.Square);

    /// <summary>Water that the ice in the glass gives while the drink stands, mL, after five and after ten minutes; nothing when neither has ice in its glass.</summary>
    public IReadOnlyList<(double Seconds, double MeantMl, double AtHomeMl)> Standing =>
        Meant.Serving.IceInGlassG <= 0 && AtHome.Serving.IceInGlassG <= 0 ? []
        : [(300, Stood.Of(Meant, 300).MeltMl, Stood.Of(AtHome, 300).MeltMl), (600, Stood.Of(Meant, 600).MeltMl, Stood.Of(AtHome, 600).MeltMl)];

    /// <summary>The change at the first sip: <c>It comes out 2.1 °C warmer, with 18 mL less water, at 12.3 % where 11.0 % was meant: noticeable, 1.3 JND.</c></summary>
    public string Words
    {
        get
        {
            var (meant, home) = (Meant.Served, AtHome.Served);
            var told = new List<string>();
            void Tell(double by, double least, string words)
            {
                if (Math.Abs(by) >= least) told.Add(words);
            }

            var (warmer, water, larger) = (home.TemperatureC - meant.TemperatureC, AtHome.MeltMl - Meant.MeltMl, home.VolumeMl - meant.VolumeMl);
            var (moves, otherPours) = (Moves, !ReferenceEquals(Meant.Pours, AtHome.Pours));
            Tell(warmer, 0.05, $"{Told.Size(warmer, "0.0")} °C {(warmer > 0 ? "warmer" : "colder")}");
            if (!otherPours) Tell(water, 0.5, $"with {Told.Size(water, "0")} mL {(water > 0 ? "more" : "less")} water");
            else Tell(larger, 0.5, $"{Told.Size(larger, "0.0")} mL {(larger > 0 ? "larger" : "smaller")}");
            Tell(home.StrengthPercent - meant.StrengthPercent, 0.05, Where("at", meant.StrengthPercent, home.StrengthPercent, " %"));
            if (otherPours)
            {
                Tell(moves.Sugar, Shown, Where("at", meant.SugarGPerL, home.SugarGPerL, " g/L of sugar"));
                Tell(moves.Acid, Shown, Where("at", meant.AcidGPerL, home.AcidGPerL, " g/L of acid"));
            }

            return told.Count == 0 ? HomeReason.Same : $"It comes out {string.Join(", ", told)}: {Verdict}.";
        }
    }

    /// <summary>Whether a drinker would notice, and how far: <c>same drink, 0.2 JND</c>.</summary>
    public string Verdict => $"{Fitting.Verdict.Alone(Fitting.Verdict.Of(DistanceJnd))}, {Told.Size(DistanceJnd, "0.0")} JND";

    private static string Where(string at, double meant, double home, string unit) => $"{at} {Told.Number(home, "0.0")}{unit} where {Told.Number(meant, "0.0")} was meant";
}

using System.Globalization;
using Washline.Drinks;

namespace Washline.App.Sheets;

/// <summary>Numbers and facts of a drink in words, the same on the sheet and in the browser.</summary>
public static class Say
{
    /// <summary>Volume to the millilitre; a tenth below 10 mL.</summary>
    public static string Ml(double ml) => Number(ml, ml < 9.95 ? "0.#" : "0") + " mL";

    /// <summary>A poured amount to a tenth of a millilitre, so that it can be added up by hand.</summary>
    public static string Poured(double ml) => Number(ml, "0.#") + " mL";

    /// <summary>Strength to a tenth of a per cent.</summary>
    public static string Percent(double percent) => Number(percent, "0.0") + " %";

    /// <summary>Grams per litre: to a gram, to a tenth below 20.</summary>
    public static string GPerL(double grams) => Number(grams, grams < 19.95 ? "0.0" : "0") + " g/L";

    /// <summary>Temperature to a degree, with a true minus sign.</summary>
    public static string Celsius(double celsius) => Number(Math.Round(celsius) == 0 ? 0 : celsius, "0") + " °C";

    /// <summary>A moment of a talk: <c>1:07</c>.</summary>
    public static string Moment(double seconds) => string.Create(CultureInfo.InvariantCulture, $"{(int)seconds / 60}:{(int)seconds % 60:00}");

    /// <summary>A signed JND to a tenth: <c>+0.4</c>, <c>−1.9</c>, <c>0.0</c>.</summary>
    public static string Signed(double jnd) => Math.Abs(jnd) < 0.05 ? "0.0" : (jnd > 0 ? "+" : "") + Number(jnd, "0.0");

    /// <summary>A distance to a tenth of a JND.</summary>
    public static string Jnd(double jnd) => Number(jnd, "0.0") + " JND";

    /// <summary>From one to the other, the unit said once.</summary>
    public static string Between(double low, double high, Func<double, string> form)
    {
        var (a, b) = (form(low), form(high));
        var unit = b.LastIndexOf(' ');
        return a == b ? a : $"{a[..a.LastIndexOf(' ')]} to {b[..unit]}{b[unit..]}";
    }

    /// <summary>Whose drink it is and whether it may be passed on, in one line.</summary>
    public static string Credit(Credit credit)
    {
        var who = string.Join(", ", new[] { credit.Maker, credit.Where }.Where(w => w.Length > 0));
        return string.Join(" · ", new[] { who, credit.Known, PassOn(credit.PassOn) }.Where(w => w.Length > 0));
    }

    /// <summary>Whether it may be passed on.</summary>
    public static string PassOn(PassOn passOn) => passOn switch
    {
        Drinks.PassOn.Yes => "may be passed on",
        Drinks.PassOn.No => "stays in this house",
        _ => "ask before passing it on",
    };

    /// <summary>How it is made, the glass and the ice.</summary>
    public static string How(Service service) => string.Join(" · ", new[] { Technique(service), OnIce(service), service.Glass.Name }.Where(w => w.Length > 0));

    /// <summary>The technique with its time and the state of the ice.</summary>
    public static string Technique(Service service)
    {
        var ice = service.IceWet switch { true => "wet ice", false => "ice from the freezer", null => "ice taken as wet" };
        var seconds = Number(service.Seconds, "0");
        var yours = service.AsYou ? service.Technique == Mixtures.Technique.Shake ? " as you shake it" : " as you stir it" : "";
        return service.Technique switch
        {
            Mixtures.Technique.NoIce => "no ice",
            Mixtures.Technique.Blend => $"blended with ice, {ice}",
            Mixtures.Technique.Shake => $"shaken {seconds} s{yours}{(service.CrushedInside ? " with crushed ice" : "")}, {ice}",
            Mixtures.Technique.Stir => $"stirred {seconds} s{yours}, {ice}",
            Mixtures.Technique.Swizzle => $"swizzled {seconds} s, {ice}",
            _ => $"built, first sip after {seconds} s, {ice}",
        };
    }

    /// <summary>The ice it is served on.</summary>
    public static string OnIce(Service service) => service.ServedOn switch
    {
        ServedIce.Cubes => "on cubes",
        ServedIce.LargeCube => "on one large cube",
        ServedIce.Crushed => "on crushed ice",
        _ => service.Technique is Mixtures.Technique.Blend or Mixtures.Technique.Swizzle ? "" : "no ice in the glass",
    };

    /// <summary>The verdict as it is said alone: <c>clear</c> is a word for a difference.</summary>
    public static string Verdict(string verdict) => Fitting.Verdict.Alone(verdict);

    /// <summary>Where the drink stands in its glass.</summary>
    public static string WashLine(WashLine line) => line.Overflows
        ? $"overflows: {Ml(line.OverMl)} more than the {line.Glass.Name} holds ({Ml(line.Glass.CapacityMl)})"
        : $"{Number(line.ToRimMm, "0")} mm below the rim of the {line.Glass.Name} ({Ml(line.Glass.CapacityMl)})";

    /// <summary>The one question that matters most, asked as long as nobody has answered it.</summary>
    public const string AskIce = "Is your ice wet, or straight from the freezer? washline bar set --ice wet|freezer";

    /// <summary>Whether that question matters to a drink.</summary>
    public static bool IceIsAsked(Service service) => service.IceWet is null && service.Technique != Mixtures.Technique.NoIce;

    /// <summary>The head on a drink, or nothing.</summary>
    public static string Foam(WashLine line) => line.FoamMl < 5 ? ""
        : $"about {Number(line.FoamMl, "0")} mL{(line.Overflows ? "" : $", {Number(line.FoamMm, "0")} mm,")} on top (our estimate, from memory)"
            + (line.Overflows || line.FoamMm <= line.ToRimMm ? "" : "; it stands above the rim");

    /// <summary>The glass that would suit better, or nothing.</summary>
    public static string Suited(WashLine line, IReadOnlyList<Glass> home) => line.Suited(home) is not { } glass ? ""
        : $"{(home.Contains(glass) ? "your" : "a")} {Drawings.GlassCaption.Named(glass)} ({Ml(glass.CapacityMl)}) would suit it better";

    /// <summary>The swing worth tasting for, or nothing.</summary>
    public static string Taste(IReadOnlyList<Swing> swings)
    {
        if (swings.FirstOrDefault(s => s.Jnd >= 0.5) is not { } swing) return "";
        var what = swing.Input.Split(", ")[0];
        return swing.Input.StartsWith("ice", StringComparison.Ordinal) ? "Your ice decides this drink."
            : swing.Input.EndsWith("how much", StringComparison.Ordinal) ? $"How much {what} goes in decides this drink: measure it."
            : swing.Input.StartsWith("how", StringComparison.Ordinal) || swing.Input.StartsWith("your own", StringComparison.Ordinal) ? "Your hand decides this drink: mind the time on the ice."
            : $"Your {what} decides this drink: taste it.";
    }

    /// <summary>Standard drinks in a serving, with the country and who publishes the figure.</summary>
    public static string StandardDrinks(double ethanolG, string country)
    {
        var standard = StandardDrink.Of(country) ?? StandardDrink.Of("who")!;
        return $"{Number(standard.Count(ethanolG), "0.0")} standard drinks ({standard.Country.ToUpperInvariant()}: {Number(standard.EthanolG, "0.##")} g of ethanol each, {standard.Publisher})";
    }

    /// <summary>What was wished of a fit, in one line.</summary>
    public static string Wishes(Fitting.Fit fit) => fit.Wishes.WordsFor(fit.Spec);

    /// <summary>What distances of a fit are counted from.</summary>
    public static string From(Fitting.Fit fit) => fit.Wishes.MovesAim ? "the drink as wished" : "the drink as meant";

    /// <summary>Which wish stands in the way, and what follows.</summary>
    public static string Refused(Fitting.Fit fit, Fitting.Refused refused)
    {
        var alone = fit.Wishes.Each.Take(2).Count() == 1;
        return refused.Nearest is null ? "That cannot be done with what is at home."
            : alone || !fit.Wishes.In(fit.Spec).Any(w => w.Words == refused.Binds) ? "That cannot be done with what is at home. Without it:"
            : $"Not all of that can be done with what is at home. What stands in the way: {refused.Binds}. Without that:";
    }

    /// <summary>A line for every line of a spec that is not in the drink, because nobody knows what it is or how much.</summary>
    public static string NotCounted(Spec spec, IEnumerable<Pour> pours) => NotCounted(spec, pours.Select(p => p.Line).OfType<Line>());

    /// <summary>A line for every line of a spec that is not among those.</summary>
    public static string NotCounted(Spec spec, IEnumerable<Line> counted)
    {
        var known = new HashSet<Line>(counted, ReferenceEqualityComparer.Instance);
        return string.Concat(spec.Lines.Where(l => !known.Contains(l)).Select(l => $"  not counted: {$"{l.Amount.Written} {l.Ingredient}".Trim()} ({Why(l)}){Environment.NewLine}"));
        static string Why(Line line) => line.Kind is null ? "not in the catalogue" : line.Optional ? "optional, and not at home" : line.Amount.Unit.Kind == UnitKind.Unsaid ? "no amount is written" : "nobody knows how much that is";
    }

    /// <summary>What stands under so many things that are done otherwise and make no difference.</summary>
    public static string Same(int count) => count == 1 ? "That leaves the drink as it is." : "These leave the drink as it is.";

    /// <summary>A number with a true minus sign.</summary>
    public static string Number(double value, string form)
    {
        var text = value.ToString(form, CultureInfo.InvariantCulture);
        // What rounds to nothing has no sign.
        return text.AsSpan().ContainsAnyInRange('1', '9') ? text.Replace('-', '−') : text.TrimStart('-');
    }
}

using System.CommandLine;
using Washline.App.Storage;
using Washline.Drinks;
using Washline.Measures;
using Washline.Mixtures;

namespace Washline.App.Commands;

/// <summary>What a person says about a drink they shook or stirred and measured.</summary>
/// <param name="technique">Shaken or stirred.</param>
internal sealed class TrialOptions(Technique technique)
{
    private const double UsualMl = 100; // where only a temperature was read
    private readonly Option<string?> volumeBefore = new("--volume-before") { Description = "Volume before the ice: 105ml, '3.5 oz'.", HelpName = "VOLUME" };
    private readonly Option<string?> volumeAfter = new("--volume-after") { Description = "Volume after straining.", HelpName = "VOLUME" };
    private readonly Option<string?> weightBefore = new("--weight-before") { Description = "Weight before the ice, without the tin: 104g.", HelpName = "WEIGHT" };
    private readonly Option<string?> weightAfter = new("--weight-after") { Description = "Weight after straining, without the glass.", HelpName = "WEIGHT" };
    private readonly Option<string?> temperature = new("--temperature") { Description = "Temperature right after straining, °C: -6.", HelpName = "CELSIUS" };
    private readonly Option<string?> seconds = new("--seconds") { Description = "How long; else as the spec says, or the usual time.", HelpName = "SECONDS" };
    private readonly Option<string?> strength = new("--strength") { Description = "Strength before the ice, % by volume.", HelpName = "PERCENT" };
    private readonly Option<string?> ice = new("--ice") { Description = "Whether the ice was wet or straight from the freezer; else as the bar says.", HelpName = "STATE" };
    private readonly Option<string?> spec = new("--spec") { Description = "The kept spec that was made, instead of --strength.", HelpName = "TITLE" };

    public void AddTo(Command command)
    {
        ice.AcceptOnlyFromAmong("wet", "freezer");
        spec.CompletionSources.Add(SpecsCommand.TitlesKept);
        foreach (var option in new Option<string?>[] { volumeBefore, volumeAfter, weightBefore, weightAfter, temperature, seconds, strength, ice, spec }) command.Add(option);
    }

    /// <summary>The drink and what was read off it.</summary>
    /// <exception cref="Refusal">Something is missing, or is no number of its kind.</exception>
    public (Calibration Trial, IReadOnlyList<Gauge> Gauges) Read(ParseResult result, Bar bar)
    {
        double? Number(Option<string?> option, string column, double low, double high, string such) => result.GetValue(option) is not { } text ? null
            : Quantity.Of(column, text.Replace('−', '-')) is { } number && number >= low && number <= high ? number
            : throw new Refusal(FormattableString.Invariant($"{option.Name} is '{text}', which is not {such} from {low} to {high}."), $"Write it such as {option.Name} {Such(column)}.");
        var (ml, mlAfter) = (Number(volumeBefore, "left_ml", 10, 2000, "a volume in mL"), Number(volumeAfter, "left_ml", 10, 4000, "a volume in mL"));
        var (grams, gramsAfter) = (Number(weightBefore, "grams", 10, 2000, "a weight in grams"), Number(weightAfter, "grams", 10, 4000, "a weight in grams"));
        var celsius = Number(temperature, "celsius", -30, 30, "a temperature in °C");
        if (mlAfter is null && gramsAfter is null && celsius is null)
            throw new Refusal("Nothing that was measured after the ice was given.", "Add --volume-after, --weight-after or --temperature.");
        if ((result.GetValue(ice) switch { "wet" => true, "freezer" => false, _ => bar.Settings.IceWet }) is not { } wet)
            throw new Refusal("Nobody has said what ice it was.", "Add --ice wet or --ice freezer.");

        var made = result.GetValue(spec) is { } title ? SpecsCommand.The(bar, title) : null;
        var percent = Number(strength, "strength_percent", 0, 80, "a strength in %");
        var time = Number(seconds, "seconds", 1, 600, "a time in seconds") ?? made?.Method.Seconds ?? (technique == Technique.Shake ? 12 : 30);
        var drink = made is not null ? Made(made, bar, ml, grams) : Told(percent ?? throw new Refusal("How strong the drink was is not known.", "Add --strength, in % before the ice, or --spec with the title of a kept spec."), ml, grams);
        var gauges = new List<Gauge>();
        if (mlAfter is { } v) gauges.Add(Gauge.OfVolume(ml ?? (made is null ? throw Before("volume") : drink.Volume.Millilitres), v));
        if (gramsAfter is { } w) gauges.Add(Gauge.OfWeight(grams ?? (made is null ? throw Before("weight") : drink.Mass), w));
        if (celsius is { } c) gauges.Add(Gauge.OfTemperature(c));
        return (new Calibration(technique, drink, wet, time), gauges);
    }

    private Mixture Told(double percent, double? ml, double? grams)
    {
        var litre = Calibration.Usual(technique, Strength.FromPercent(percent), 1000)
            ?? throw new Refusal("So strong a drink leaves no room for sugar.", "Check the strength before the ice, or name the spec with --spec.");
        return litre * ((ml ?? grams / litre.Mass * 1000 ?? UsualMl) / 1000);
    }

    // The spec's own drink, as much of it as was measured.
    private static Mixture Made(Spec spec, Bar bar, double? ml, double? grams)
    {
        var drink = ServedDrink.Of(spec, bar.Settings.IceWet).Pours.Where(p => !p.Last).Aggregate(Mixture.Empty, (sum, p) => sum + p.Mixture);
        if (drink.Mass < 1) throw new Refusal($"Nothing in {spec.Title} meets the ice.", "Name another spec, or give --strength.");
        return drink * (ml / drink.Volume.Millilitres ?? grams / drink.Mass ?? 1);
    }

    private static Refusal Before(string what) => new($"The {what} before the ice is missing.", $"Add --{what}-before, or --spec with the title of a kept spec.");

    private static string Such(string column) => column switch { "left_ml" => "105ml", "grams" => "104g", "celsius" => "-6", "strength_percent" => "22", _ => "12" };
}

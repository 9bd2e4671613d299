using System.CommandLine;
using System.Globalization;
using System.Text.Json.Nodes;
using Washline.App.Sheets;
using Washline.Drinks;
using Washline.Measures;
using Washline.Mixtures;

namespace Washline.App.Commands;

/// <summary><c>washline calibrate</c>: a person's own shake and stir, from what they read off jug, scale or thermometer.</summary>
public static class CalibrateCommand
{
    /// <summary>The command.</summary>
    public static Command Make() => new Verb("calibrate", "Learns how you shake or stir, from what you measured before and after.", "washline calibrate shake --weight-before 104g --weight-after 158g --strength 22 --ice wet")
    {
        One(Technique.Shake, "Learns how you shake: shake a drink, strain it, measure it.", "washline calibrate shake --volume-before 105ml --volume-after 160ml --seconds 12 --strength 22 --ice wet", "washline calibrate shake --spec Daiquiri --temperature -6 --ice wet", "washline calibrate shake --forget"),
        One(Technique.Stir, "Learns how you stir: stir a drink, strain it, measure it.", "washline calibrate stir --weight-before 86g --weight-after 117g --seconds 30 --strength 30 --ice freezer", "washline calibrate stir --forget"),
    };

    /// <summary>A factor in words: <c>1.10 times the usual rate (0.80 to 1.50)</c>.</summary>
    internal static string Times(Band factor) => $"{Number(factor.Typical)} times the usual rate ({Number(factor.Low)} to {Number(factor.High)})";

    private static Verb One(Technique technique, string does, params string[] examples)
    {
        var name = technique == Technique.Shake ? "shake" : "stir";
        var options = new TrialOptions(technique);
        var forget = new Option<bool>("--forget") { Description = "Forgets what was learned; the usual rate stands again." };
        var command = new Verb(name, does, examples);
        options.AddTo(command);
        command.Add(forget);
        command.SetAction(result => result.GetValue(forget) ? Forget(result, technique, name) : Learn(result, technique, name, options));
        return command;
    }

    private static int Forget(ParseResult result, Technique technique, string name)
    {
        var had = false;
        result.OpenBar().Change(bar =>
        {
            had = bar.Settings.Hand.Of(technique) is not null;
            return had ? bar with { Settings = bar.Settings with { Hand = bar.Settings.Hand.With(technique, null) } } : bar;
        });
        if (result.Json()) result.Output().WriteLine(DrinkJson.Text(new JsonObject { ["technique"] = name, ["factor"] = null }));
        else result.Output().WriteLine(had ? $"Your {name} is forgotten; the usual rate stands again." : $"No {name} of yours was known; the usual rate stands.");
        return 0;
    }

    private static int Learn(ParseResult result, Technique technique, string name, TrialOptions options)
    {
        var bar = result.LookIntoBar();
        var (trial, gauges) = options.Read(result, bar);
        var found = gauges.Select(gauge => (Gauge: gauge, Factor: trial.Find(gauge) ?? throw Unreachable(trial, gauge, name))).ToList();
        var now = Calibration.Together([.. found.Select(f => f.Factor)]);
        var before = bar.Settings.Hand.Of(technique);
        Band kept = default;
        result.OpenBar().Change(at =>
        {
            kept = at.Settings.Hand.Of(technique) is { } known ? Calibration.Together([known, now]) : now;
            return at with { Settings = at.Settings with { Hand = at.Settings.Hand.With(technique, kept) } };
        });
        if (result.Json()) result.Output().WriteLine(Json(name, found, kept));
        else Say(result.Output(), name, found, before, kept);
        return 0;
    }

    private static void Say(TextWriter to, string name, List<(Gauge Gauge, Band Factor)> found, Band? before, Band kept)
    {
        foreach (var (gauge, factor) in found) to.WriteLine($"  by {Word(gauge.What)}: {Times(factor)}");
        if (before is { } known) to.WriteLine($"  known before: {Times(known)}");
        to.WriteLine($"You {name} at {Times(kept)}.");
        to.WriteLine($"From now on the sheets say 'as you {name} it'. To take it back: washline calibrate {name} --forget");
    }

    private static string Json(string name, List<(Gauge Gauge, Band Factor)> found, Band kept)
    {
        JsonObject Of(Band factor) => new() { ["factor"] = Round(factor.Typical), ["low"] = Round(factor.Low), ["high"] = Round(factor.High) };
        var json = Of(kept);
        json.Insert(0, "technique", name);
        json["readings"] = new JsonArray([.. found.Select(f =>
        {
            var reading = Of(f.Factor);
            reading.Insert(0, "by", Word(f.Gauge.What));
            return reading;
        })]);
        return DrinkJson.Text(json);
    }

    private static Refusal Unreachable(Calibration trial, Gauge gauge, string name)
    {
        var (low, high) = trial.Reach(gauge.What);
        var unit = gauge.What switch { Gauged.Volume => "mL", Gauged.Weight => "g", _ => "°C" };
        string Read(double value) => Sheets.Say.Number(value * gauge.Before, unit == "°C" ? "0.#" : "0");
        return new Refusal($"However one {name}s this drink, its {Word(gauge.What)} comes to {Read(low)} to {Read(high)} {unit}; {Read(gauge.Value)} {unit} was read.",
            "Check the readings, the time and whether the ice was wet or straight from the freezer.");
    }

    private static string Word(Gauged what) => what.ToString().ToLowerInvariant();

    private static string Number(double factor) => factor.ToString("0.00", CultureInfo.InvariantCulture);

    private static double Round(double value) => Math.Round(value, 4);
}

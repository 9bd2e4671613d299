using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Washline.Drinks;
using Washline.Fitting;
using Washline.Reading;

namespace Washline.App.Sheets;

/// <summary>Answers as JSON: stable names, the unit in each name.</summary>
public static class DrinkJson
{
    private static readonly JsonSerializerOptions Form = new() { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The answer of <c>pour</c>: an object for one spec, an array for any other number of them.</summary>
    public static string Of(IReadOnlyList<(Spec Spec, ServedDrink Drink)> poured, string country, IReadOnlyList<Problem> problems, bool more = false) =>
        OneOrMore(poured.Select(p => Of(p.Spec, p.Drink, country, problems, more)));

    /// <summary>The answer of <c>fit</c>: an object for one spec, an array for any other number of them.</summary>
    public static string Of(IReadOnlyList<Fit> fits, string country) => OneOrMore(fits.Select(fit => Node(fit, country)));

    /// <summary>The answer of <c>fit</c> for one spec.</summary>
    public static string Of(Fit fit, string country) => Text(Node(fit, country));

    private static JsonObject Of(Spec spec, ServedDrink drink, string country, IReadOnlyList<Problem> problems, bool more)
    {
        var built = Sip(drink.Built);
        built.Remove("temperatureC");
        var course = drink.Course;
        var json = new JsonObject
        {
            ["spec"] = spec.Title,
            ["ice"] = drink.Service.IceWet switch { true => "wet", false => "freezer", null => null },
            ["ownHand"] = drink.Service.Hand.Of(drink.Service.Technique) is { } hand ? Round(hand.Typical) : null,
            ["technique"] = JsonNamingPolicy.CamelCase.ConvertName(drink.Service.Technique.ToString()),
            ["seconds"] = Round(drink.Service.Seconds),
            ["stopSeconds"] = course.StopSeconds is { } stop ? Round(stop) : null,
            ["built"] = built,
            ["served"] = Served(drink),
            ["low"] = Served(drink.Low, drink.Melt.Low, drink.Dilution.Low),
            ["high"] = Served(drink.High, drink.Melt.High, drink.Dilution.High),
            ["course"] = IceTime.Json(course),
            ["prebatch"] = BatchSheet.Json(drink),
            ["freezer"] = BatchSheet.Freezer(drink),
            ["swings"] = Array(drink.Swings.Select(s => new JsonObject { ["input"] = s.Input, ["attribute"] = s.Attribute, ["jnd"] = Round(s.Jnd) })),
            ["washLine"] = WashLine(drink.WashLine),
            ["standardDrinks"] = Standard(drink, country),
            ["allergens"] = Array(Cautions.Allergens(drink.Pours).Select(a => JsonValue.Create(a))),
            ["cautions"] = Array(Cautions.Of(drink.Pours, drink.Service.Technique).Append(Cautions.First).Select(c => JsonValue.Create(c))),
            ["problems"] = Problems(problems),
        };
        if (more && drink.Served.VolumeMl > 0) json["more"] = AnalysisSheet.Json(Analysis.Of(drink.Pours, drink.Service));
        return json;
    }

    private static JsonObject Node(Fit fit, string country)
    {
        var json = new JsonObject
        {
            ["spec"] = fit.Spec.Title,
            ["wishes"] = Array(fit.Wishes.In(fit.Spec).Select(w => JsonValue.Create(w.Words))),
            ["refused"] = fit.Refused is { } refused ? new JsonObject { ["binds"] = refused.Binds, ["nearest"] = refused.Nearest is { } nearest ? Node(nearest, country) : null } : null,
            ["target"] = Served(fit.Target),
            ["outOfReach"] = Array(fit.OutOfReach.Select(o => new JsonObject
            {
                ["line"] = o.Line,
                ["asked"] = o.Asked,
                ["reason"] = o.Reason,
                ["nearest"] = o.Nearest,
                ["nearestJnd"] = Round(o.NearestJnd),
                ["buy"] = o.Buy,
            })),
            ["atHome"] = Array(fit.Home.Reasons.Select(r => JsonValue.Create(r.Sentence))),
            ["reasons"] = Array(fit.Home.Reasons.Select(ReasonJson.Of)),
        };
        foreach (var (name, offer) in new[] { ("straight", fit.Straight), ("closest", fit.Closest), ("simplest", fit.Simplest) })
            if (offer is not null) json[name] = Of(offer, country);
        if (fit.Closest is null) return json;
        var ways = Ways.Of(fit);
        json["alternatives"] = Array(ways.Alternatives.Select(o => Of(o, country)));
        json["closings"] = Array(ways.Closings.Select(c => new JsonObject { ["what"] = c.Words, ["line"] = c.Line, ["distanceJnd"] = Round(c.DistanceJnd), ["verdict"] = Verdict.Of(c.DistanceJnd) }));
        json["standing"] = ways.Standing is { } standing ? Stands(standing) : null;
        json["candidates"] = fit.Candidates;
        json["proven"] = fit.IsProven;
        return json;
    }

    /// <summary>The answer of <c>read</c>.</summary>
    public static string Of(Draft draft) => Text(new JsonObject
    {
        ["specs"] = Array(draft.Specs.Select((spec, s) => new JsonObject
        {
            ["title"] = spec.Title,
            ["lines"] = Array(spec.Lines.Select((line, l) => new JsonObject
            {
                ["written"] = line.Amount.Written,
                ["amount"] = line.Amount.Unit.Kind == UnitKind.Unsaid ? null : Round(line.Amount.Middle),
                ["unit"] = line.Amount.Unit.Kind == UnitKind.Unsaid ? null : line.Amount.Unit.Name,
                ["volumeMl"] = line.Amount.Millilitres(line.Kind, spec.PartMl) is { } ml ? Round(ml.Typical) : null,
                ["ingredient"] = line.Ingredient,
                ["kind"] = line.Kind?.Id,
                ["strengthPercent"] = line.Strength?.Percent,
                ["note"] = line.Note,
                ["optional"] = line.Optional,
                ["from"] = s < draft.Origins.Count && l < draft.Origins[s].Count ? From(draft.Origins[s][l]) : null,
            })),
            ["method"] = spec.Method.Written,
            ["technique"] = JsonNamingPolicy.CamelCase.ConvertName(spec.Method.Technique.ToString()),
            ["seconds"] = spec.Method.Seconds,
            ["ice"] = JsonNamingPolicy.CamelCase.ConvertName(spec.Ice.ToString()),
            ["glass"] = spec.Glass,
            ["garnish"] = Array(spec.Garnish.Select(g => JsonValue.Create(g))),
            ["credit"] = new JsonObject
            {
                ["maker"] = spec.Credit.Maker,
                ["where"] = spec.Credit.Where,
                ["known"] = spec.Credit.Known,
                ["passOn"] = JsonNamingPolicy.CamelCase.ConvertName(spec.Credit.PassOn.ToString()),
            },
            ["made"] = Array(spec.OwnRecipes.Select(r => new JsonObject { ["name"] = r.Name, ["written"] = r.Written })),
            ["notes"] = Array(spec.Notes.Select(n => JsonValue.Create(n))),
        })),
        ["problems"] = Problems(draft.Problems),
    });

    private static JsonObject From(Origin origin) => new()
    {
        ["line"] = origin.Line,
        ["column"] = origin.Column,
        ["words"] = origin.Words,
        ["seconds"] = origin.Seconds is { } seconds ? Round(seconds) : null,
        ["confidence"] = origin.Confidence,
        ["mended"] = Array(origin.Mended.Select(m => new JsonObject { ["heard"] = m.Heard, ["as"] = m.As })),
    };

    private static JsonObject Of(Offer offer, string country) => new()
    {
        ["lines"] = Array(offer.Lines.Select(l => new JsonObject
        {
            ["asked"] = $"{l.Line.Amount.Written} {l.Line.Ingredient}",
            ["askedMl"] = Round(l.AskedMl),
            ["bottle"] = l.Pour.Name,
            ["volumeMl"] = Round(l.Mark.Millilitres),
            ["measure"] = l.Mark.Text,
            ["parts"] = Array(l.Parts.Select(p => new JsonObject { ["bottle"] = p.Pour.Name, ["volumeMl"] = Round(p.Mark.Millilitres), ["measure"] = p.Mark.Text })),
            ["byEye"] = l.Mark.ByEye,
            ["changed"] = l.Changed,
            ["standInJnd"] = Round(l.StandInJnd),
            ["flavourJnd"] = Round(l.FlavourJnd),
            ["why"] = l.Why,
        })),
        ["served"] = Served(offer.Drink),
        ["distanceJnd"] = Round(offer.DistanceJnd),
        ["verdict"] = offer.Verdict,
        ["mostly"] = offer.Most.Words,
        ["moves"] = new JsonObject
        {
            ["sugar"] = Round(offer.Moves.Sugar),
            ["acid"] = Round(offer.Moves.Acid),
            ["strength"] = Round(offer.Moves.Strength),
            ["volume"] = Round(offer.Moves.Volume),
            ["temperature"] = Round(offer.Moves.Temperature),
        },
        ["changedLines"] = offer.ChangedLines,
        ["seconds"] = Round(offer.Drink.Service.Seconds),
        ["stopSeconds"] = offer.Drink.Course.StopSeconds is { } stop ? Round(stop) : null,
        ["washLine"] = WashLine(offer.Drink.WashLine),
        ["standardDrinks"] = Standard(offer.Drink, country),
        ["allergens"] = Array(Cautions.Allergens(offer.Drink.Pours).Select(a => JsonValue.Create(a))),
        ["cautions"] = Array(Cautions.Of(offer.Drink.Pours, offer.Drink.Service.Technique).Append(Cautions.First).Select(c => JsonValue.Create(c))),
    };

    /// <summary>A drink at its first sip.</summary>
    internal static JsonObject Served(ServedDrink drink) => Served(drink.Served, drink.MeltMl, drink.DilutionPercent);

    private static JsonObject Served(Sip sip, double meltMl, double dilutionPercent)
    {
        var json = Sip(sip);
        json["meltMl"] = Round(meltMl);
        json["dilutionPercent"] = Round(dilutionPercent);
        return json;
    }

    private static JsonObject Sip(Sip sip) => new()
    {
        ["volumeMl"] = Round(sip.VolumeMl),
        ["strengthPercent"] = Round(sip.StrengthPercent),
        ["sugarGPerL"] = Round(sip.SugarGPerL),
        ["acidGPerL"] = Round(sip.AcidGPerL),
        ["temperatureC"] = Round(sip.TemperatureC),
    };

    private static JsonObject Stands(Standing standing) => new()
    {
        ["holds"] = standing.Holds,
        ["hangsOn"] = standing.Holds ? null : standing.HangsOn,
        ["strictJnd"] = Round(standing.StrictJnd),
        ["strictVerdict"] = standing.StrictVerdict,
        ["straightStrictJnd"] = Round(standing.StraightStrictJnd),
        ["lowJnd"] = Round(standing.LowJnd),
        ["highJnd"] = Round(standing.HighJnd),
    };

    private static JsonObject WashLine(WashLine line) => new()
    {
        ["glass"] = line.Glass.Name,
        ["capacityMl"] = Round(line.Glass.CapacityMl),
        ["toRimMm"] = Round(line.ToRimMm),
        ["overflows"] = line.Overflows,
        ["overMl"] = Round(line.OverMl),
        ["foamMl"] = Round(line.FoamMl),
        ["foamMm"] = Round(line.FoamMm),
        ["looksEmpty"] = line.LooksEmpty,
        ["wouldSuit"] = line.Suited([])?.Name,
    };

    private static JsonObject Standard(ServedDrink drink, string country)
    {
        var standard = StandardDrink.Of(country) ?? StandardDrink.Of("who")!;
        return new JsonObject
        {
            ["country"] = standard.Country,
            ["count"] = Round(standard.Count(drink.EthanolG)),
            ["gramsEthanol"] = Round(drink.EthanolG),
            ["publisher"] = standard.Publisher,
        };
    }

    private static JsonArray Problems(IReadOnlyList<Problem> problems) => Array(problems.Select(p => new JsonObject
    {
        ["line"] = p.Line,
        ["column"] = p.Column,
        ["what"] = p.What,
        ["try"] = p.Try,
    }));

    private static JsonArray Array(IEnumerable<JsonNode?> items) => new([.. items]);

    // One spec is an object; any other number of them is an array, so that the answer is one document whatever was read.
    private static string OneOrMore(IEnumerable<JsonObject> answers) => answers.ToArray() is var all && all.Length == 1 ? Text(all[0]) : Text(new JsonArray([.. all]));

    // More digits than any of our models is good for, fewer than noise.
    internal static double Round(double value) => Math.Round(value, 3) + 0.0;

    /// <summary>JSON as every answer is written.</summary>
    internal static string Text(JsonNode json) => json.ToJsonString(Form);
}

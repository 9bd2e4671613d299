using System.Text.Json;
using System.Text.Json.Nodes;
using Washline.Fitting.Guessing;
using Washline.Reading;

namespace Washline.App.Sheets;

/// <summary>The answer of <c>guess</c> as JSON.</summary>
public static class GuessJson
{
    /// <summary>The answer.</summary>
    public static string Of(Guess guess, IReadOnlyList<Problem> problems) => DrinkJson.Text(new JsonObject
    {
        ["title"] = guess.Menu.Title,
        ["named"] = Array(guess.Menu.Ingredients.Select(i => new JsonObject { ["words"] = i.Words, ["kind"] = i.Kind.Id })),
        ["proposals"] = Array(guess.Proposals.Select(Node)),
        ["problems"] = Array(problems.Select(p => new JsonObject { ["line"] = p.Line, ["column"] = p.Column, ["what"] = p.What, ["try"] = p.Try })),
    });

    private static JsonObject Node(Proposal proposal) => new()
    {
        ["family"] = JsonNamingPolicy.CamelCase.ConvertName(proposal.Family.ToString()),
        ["lines"] = Array(proposal.Lines.Select(l => new JsonObject
        {
            ["measure"] = l.Line.Amount.Written,
            ["ingredient"] = l.Line.Ingredient,
            ["kind"] = l.Line.Kind!.Id,
            ["volumeMl"] = Round(l.Millilitres),
            ["lowMl"] = l.LowMl is { } low ? Round(low) : null,
            ["highMl"] = l.HighMl is { } high ? Round(high) : null,
            ["unsaid"] = l.Unsaid,
            ["why"] = l.Why,
        })),
        ["technique"] = JsonNamingPolicy.CamelCase.ConvertName(proposal.Spec.Method.Technique.ToString()),
        ["ice"] = JsonNamingPolicy.CamelCase.ConvertName(proposal.Spec.Ice.ToString()),
        ["glass"] = proposal.Spec.Glass,
        ["served"] = new JsonObject
        {
            ["volumeMl"] = Round(proposal.Drink.Served.VolumeMl),
            ["strengthPercent"] = Round(proposal.Drink.Served.StrengthPercent),
            ["sugarGPerL"] = Round(proposal.Drink.Served.SugarGPerL),
            ["acidGPerL"] = Round(proposal.Drink.Served.AcidGPerL),
            ["temperatureC"] = Round(proposal.Drink.Served.TemperatureC),
        },
        ["offMl"] = Round(proposal.OffMl),
        ["remarks"] = Array(proposal.Remarks.Select(r => JsonValue.Create(r))),
    };

    private static JsonArray Array(IEnumerable<JsonNode?> items) => new([.. items]);

    private static double Round(double value) => Math.Round(value, 3) + 0.0;
}

using System.CommandLine;
using Washline.Drinks;

namespace Washline.App.Commands;

/// <summary>What may be said anew for one answer: the ice, and whose standard drink is counted.</summary>
internal sealed class ServiceOptions
{
    private readonly Option<string?> ice = new("--ice") { Description = "The ice for this answer: wet (0 °C) or straight from the freezer (−18 °C).", HelpName = "STATE" };
    private readonly Option<string?> country = new("--country") { Description = "Whose standard drink is counted in this answer.", HelpName = "CODE" };

    public ServiceOptions()
    {
        ice.AcceptOnlyFromAmong("wet", "freezer");
        country.AcceptOnlyFromAmong([.. Storage.Things.Countries]);
    }

    public void AddTo(Command command)
    {
        command.Add(ice);
        command.Add(country);
    }

    /// <summary>The bar with what was said anew.</summary>
    public Bar Over(Bar bar, ParseResult result) => bar with
    {
        Settings = bar.Settings with
        {
            Country = result.GetValue(country) ?? bar.Settings.Country,
            IceWet = result.GetValue(ice) switch { "wet" => true, "freezer" => false, _ => bar.Settings.IceWet },
        },
    };
}

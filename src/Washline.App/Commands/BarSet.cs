using System.CommandLine;
using Washline.App.Storage;

namespace Washline.App.Commands;

/// <summary><c>washline bar set</c>: what the household says once.</summary>
internal static class BarSet
{
    public static Command Make()
    {
        var country = new Option<string?>("--country") { Description = $"Whose standard drink is counted: {string.Join(", ", Things.Countries)}.", HelpName = "CODE" };
        country.AcceptOnlyFromAmong(Things.Countries);
        var ice = new Option<string?>("--ice") { Description = "Whether the ice is wet (0 °C) or straight from the freezer (−18 °C).", HelpName = "STATE" };
        ice.AcceptOnlyFromAmong("wet", "freezer");
        var command = new Verb("set", "Tells the program once what holds for the whole house; without options, shows it.", "washline bar set --country uk --ice freezer") { country, ice };
        command.SetAction(result =>
        {
            var settings = result.OpenBar().Change(bar =>
            {
                var told = bar.Settings;
                if (result.GetValue(country) is { } code) told = told with { Country = code };
                if (result.GetValue(ice) is { } state) told = told with { IceWet = state == "wet" };
                return told == bar.Settings ? bar : bar with { Settings = told };
            }).Settings;
            if (result.Json()) result.Output().Write(BarJson.Write(settings));
            else result.Output().WriteLine($"Country: {settings.Country}. Ice: {(settings.IceWet is { } wet ? wet ? "wet (0 °C)" : "from the freezer (−18 °C)" : "not said yet")}.{Hand("shake", settings.Hand.Shake)}{Hand("stir", settings.Hand.Stir)}");
        });
        return command;
    }

    private static string Hand(string which, Measures.Band? factor) => factor is null ? "" : $" Your {which}: {CalibrateCommand.Times(factor.Value)}.";
}

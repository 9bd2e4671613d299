using System.CommandLine;
using Washline.App.Storage;

namespace Washline.App.Commands;

/// <summary><c>washline bar change</c>: what has changed about a thing at home.</summary>
internal static class BarChange
{
    public static Command Make()
    {
        var name = AtHome.NameArgument();
        var what = AtHome.WhatOption();
        var options = new ThingOptions(Columns.ByWhat.Where(w => w.Key is not ("settings" or "spec" or "house-pour")).SelectMany(w => w.Value));
        var command = new Verb("change", "Changes what is said about something at home; an empty value ('') takes it back.",
            "washline bar change \"The rye\" --left 450ml", "washline bar change \"The rye\" --name \"Old rye\" --strength ''")
        {
            name, what,
        };
        options.To(command);
        command.SetAction(result =>
        {
            if (options.None(result)) return result.Problem("Nothing was said to change.", "Add an option, such as --left 450ml; 'washline bar change --help' lists them.");
            IReadOnlyList<Reading.Problem> problems = [];
            object? changed = null;
            result.OpenBar().Change(bar =>
            {
                var old = AtHome.The(bar, result.GetRequiredValue(name), result.GetValue(what));
                var entry = options.Entry(result, Things.What(old), Things.Name(old), Things.Entry(old));
                var next = new Arrivals([entry], []).Into(Household.Without(bar, old), out problems);
                changed = problems.Count > 0 ? null : Things.Read(entry);
                return problems.Count > 0 ? bar : next;
            });
            return changed is null ? result.Refuse(problems) : result.Tell("Changed", changed);
        });
        return command;
    }
}

using System.CommandLine;
using Washline.App.Storage;

namespace Washline.App.Commands;

/// <summary><c>washline bar remove</c>: what is no longer at home.</summary>
internal static class BarRemove
{
    public static Command Make()
    {
        var name = AtHome.NameArgument();
        var what = AtHome.WhatOption();
        var command = new Verb("remove", "Takes something out of the bar.", "washline bar remove \"The rye\"") { name, what };
        command.SetAction(result =>
        {
            object? gone = null;
            result.OpenBar().Change(bar => Household.Without(bar, gone = AtHome.The(bar, result.GetRequiredValue(name), result.GetValue(what))));
            return result.Tell("Removed", gone!);
        });
        return command;
    }
}

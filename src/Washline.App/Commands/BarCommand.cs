using System.CommandLine;

namespace Washline.App.Commands;

/// <summary><c>washline bar</c>: what is at home.</summary>
public static class BarCommand
{
    /// <summary>The command.</summary>
    public static Command Make() => new Verb("bar", "What is at home: bottles, house-made, fruit, tools, glasses, measures.", "washline bar list")
    {
        BarList.Make(),
        BarAdd.Make(),
        BarChange.Make(),
        BarUse.Make(),
        BarRemove.Make(),
        BarName.Make(),
        BarSet.Make(),
        BarImport.Make(),
        BarExport.Make(),
    };
}

using System.CommandLine;
using System.CommandLine.Help;

namespace Washline.App.Commands;

/// <summary>The whole command line. Each command makes itself in its own file.</summary>
public static class Root
{
    /// <summary>The commands; made once, because options know the commands they belong to.</summary>
    public static RootCommand Command { get; } = Make();

    private static RootCommand Make()
    {
        var root = new RootCommand("Computes the drink, and fits somebody else's spec to the bottles at home.")
        {
            ReadCommand.Make(),
            PourCommand.Make(),
            FitCommand.Make(),
            RiffCommand.Make(),
            TonightCommand.Make(),
            GuessCommand.Make(),
            BarCommand.Make(),
            SpecsCommand.Make(),
            CalibrateCommand.Make(),
            DemoCommand.Make(),
            OpenCommand.Make(),
            CompletionCommand.Make(),
        };
        root.HelpName = "washline";
        root.Add(Shared.BarOption);
        root.Add(Shared.DemoOption);
        root.Add(Shared.JsonOption);
        var help = root.Options.OfType<HelpOption>().Single();
        help.Action = new HelpWithExamples((HelpAction)help.Action!);
        return root;
    }
}

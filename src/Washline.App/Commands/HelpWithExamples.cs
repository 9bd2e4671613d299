using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;

namespace Washline.App.Commands;

/// <summary>The help of a command, with its examples below.</summary>
/// <param name="usual">The help without them.</param>
internal sealed class HelpWithExamples(HelpAction usual) : SynchronousCommandLineAction
{
    private static readonly string[] OfTheProgram = ["washline demo", "washline bar add bottle \"The rye\" --kind \"rye whisky\" --strength 50 --size 700ml", "washline specs list"];

    public override bool ClearsParseErrors => true;

    public override int Invoke(ParseResult parseResult)
    {
        usual.MaxWidth = 100;
        var answer = usual.Invoke(parseResult);
        var examples = parseResult.CommandResult.Command switch
        {
            Verb verb => verb.Examples,
            RootCommand => OfTheProgram,
            _ => [],
        };
        var output = parseResult.InvocationConfiguration.Output;
        if (examples.Count > 0) output.WriteLine(examples.Count == 1 ? "Example:" : "Examples:");
        foreach (var example in examples) output.WriteLine("  " + example);
        return answer;
    }
}

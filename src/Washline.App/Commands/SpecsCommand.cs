using System.CommandLine;

namespace Washline.App.Commands;

/// <summary><c>washline specs</c>: the makers' specs that are kept.</summary>
public static class SpecsCommand
{
    /// <summary>The command.</summary>
    public static Command Make() => new Verb("specs", "The makers' specs that are kept beside the bottles.", "washline specs list")
    {
    };
}

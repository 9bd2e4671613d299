using System.Diagnostics.CodeAnalysis;

namespace Washline.App;

/// <summary>Why the program cannot go on, in words for the person: a file that is not a bar, a file that is not there. Ends in exit code 1.</summary>
/// <param name="what">What happened, as a sentence.</param>
/// <param name="try">What to do, as a sentence.</param>
[SuppressMessage("Naming", "CA1710:Identifiers should have correct suffix", Justification = "It is named for what the person meets.")]
[SuppressMessage("Design", "CA1032:Implement standard exception constructors", Justification = "A refusal without its two sentences is no use to anybody.")]
public sealed class Refusal(string what, string @try) : Exception($"{what}  {@try}")
{
    /// <summary>What happened, as a sentence.</summary>
    public string What { get; } = what;

    /// <summary>What to do, as a sentence.</summary>
    public string Try { get; } = @try;
}

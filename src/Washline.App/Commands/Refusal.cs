namespace Washline.App.Commands;

/// <summary>Why the program cannot go on, in words for the person: a file that is not a bar, a name nobody has. Ends in exit code 1.</summary>
/// <param name="what">What happened, as a sentence.</param>
/// <param name="try">What to do, as a sentence.</param>
internal sealed class Refusal(string what, string @try) : Exception($"{what}  {@try}")
{
    /// <summary>What happened, as a sentence.</summary>
    public string What { get; } = what;

    /// <summary>What to do, as a sentence.</summary>
    public string Try { get; } = @try;
}

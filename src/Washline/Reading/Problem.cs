namespace Washline.Reading;

/// <summary>Something in a text that could not be read as meant: where, what, and what to do.</summary>
/// <param name="Line">Line of the text, from 1.</param>
/// <param name="Column">Column in that line, from 1.</param>
/// <param name="What">What was found, as a sentence.</param>
/// <param name="Try">What to do, as a sentence.</param>
public sealed record Problem(int Line, int Column, string What, string Try)
{
    /// <summary>As the commands print it: <c>file:line:column  what is wrong  what to do</c>.</summary>
    public string At(string file) => $"{file}:{Line}:{Column}  {What}  {Try}";
}

namespace Washline.Reading.Data;

/// <summary>A line as it would be written by hand: a name of ours such as <c>garnish: </c>, and words out of the source.</summary>
/// <param name="Name">With its colon and blank; empty for an ingredient.</param>
/// <param name="Words">One line of words.</param>
internal sealed record WrittenLine(string Name, Placed Words)
{
    public string Text => Name + Words.Text;

    /// <summary>Where in the source the letter in that column of the line stands.</summary>
    public int At(int column) => Words.At(column - 1 - Name.Length);
}

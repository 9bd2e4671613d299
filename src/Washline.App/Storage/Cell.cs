namespace Washline.App.Storage;

/// <summary>A word that somebody wrote, and where.</summary>
/// <param name="Text">The word; empty for nothing.</param>
/// <param name="Line">Line, from 1.</param>
/// <param name="Column">Column in that line, from 1.</param>
internal readonly record struct Cell(string Text, int Line, int Column);

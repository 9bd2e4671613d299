namespace Washline.Reading.Speech;

/// <summary>One drink of a talk: the words in which it is told, its ingredients and its name.</summary>
/// <param name="From">The first word.</param>
/// <param name="To">The word behind the last.</param>
/// <param name="Told">What is told in it, in order.</param>
/// <param name="Name">Its name, where one is said.</param>
internal sealed record Round(int From, int To, IReadOnlyList<Told> Told, SaidName? Name);

using Washline.Reading;

namespace Washline.App.Pages;

/// <summary>One line of a draft that the person may mend.</summary>
/// <param name="Text">As it stands in the field.</param>
/// <param name="Problems">What could not be read in it; columns count from its first letter.</param>
/// <param name="Origin">Where in the text it was read; nothing for a line the person has added.</param>
public sealed record DraftField(string Text, IReadOnlyList<Problem> Problems, Origin? Origin);

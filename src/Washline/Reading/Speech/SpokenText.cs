using System.Text;

namespace Washline.Reading.Speech;

/// <summary>A stretch of a talk as one plain text, for turns of phrase that are found in it: words parted by blanks, pauses as <c>,</c> and <c>.</c></summary>
internal sealed class SpokenText
{
    private readonly List<(int At, int Word)> places = [];

    private SpokenText(string text) => Text = text;

    public string Text { get; private set; }

    public static SpokenText Of(Talk talk, int from, int to)
    {
        var spoken = new SpokenText("");
        var text = new StringBuilder();
        for (var i = from; i < to; i++)
        {
            if (i > from) text.Append(talk.Before(i) switch { Pause.Stop => " . ", Pause.Comma => " , ", _ => " " });
            spoken.places.Add((text.Length, i));
            text.Append(talk[i]);
        }

        spoken.Text = text.ToString();
        return spoken;
    }

    /// <summary>The word that stands at that place of the text, or the first behind it.</summary>
    public int Word(int at)
    {
        var (low, high) = (0, places.Count);
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (places[middle].At < at) low = middle + 1;
            else high = middle;
        }

        return low < places.Count ? places[low].Word : places.Count == 0 ? 0 : places[^1].Word + 1;
    }

    /// <summary>Where that word stands in the text.</summary>
    public int At(int word) => places.Count == 0 ? 0 : places[Math.Clamp(word - places[0].Word, 0, places.Count - 1)].At;
}

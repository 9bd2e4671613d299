using System.Text;

namespace Washline.Reading.Speech;

/// <summary>A stretch of a talk as one plain text, for turns of phrase that are found in it: words parted by blanks, pauses as <c>,</c> and <c>.</c></summary>
internal sealed class SpokenText
{
    private readonly List<(int At, int Word)> places = [];

    private SpokenText(string text) => Text = text;

    public string Text { get; private set; }

    /// <summary>A stretch of the talk.</summary>
    /// <param name="talk">The talk.</param>
    /// <param name="from">The first word.</param>
    /// <param name="to">The word behind the last.</param>
    /// <param name="asked">Whether questions belong to it.</param>
    public static SpokenText Of(Talk talk, int from, int to, bool asked = true)
    {
        var spoken = new SpokenText("");
        var text = new StringBuilder();
        for (var i = from; i < to; i++)
        {
            if (!asked && talk.IsAsked(i)) continue;
            if (text.Length > 0) text.Append(talk.Before(i) switch { Pause.Stop => " . ", Pause.Comma => " , ", _ => " " });
            spoken.places.Add((text.Length, i));
            text.Append(talk[i]);
        }

        spoken.Text = text.ToString();
        return spoken;
    }

    /// <summary>The word that stands at that place of the text, or the first behind it.</summary>
    public int Word(int at)
    {
        var place = First(p => p.At >= at);
        return place < places.Count ? places[place].Word : places.Count == 0 ? 0 : places[^1].Word + 1;
    }

    /// <summary>Where that word stands in the text, or the first behind it.</summary>
    public int At(int word) => First(p => p.Word >= word) is var place && place < places.Count ? places[place].At : places.Count == 0 ? 0 : places[^1].At;

    private int First(Func<(int At, int Word), bool> behind)
    {
        var (low, high) = (0, places.Count);
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (behind(places[middle])) high = middle;
            else low = middle + 1;
        }

        return low;
    }
}

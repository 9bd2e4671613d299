using Washline.Tests.Storage;

namespace Washline.Tests.Commands;

public sealed class ReadJson : IDisposable
{
    private const string Talk = """
        WEBVTT

        00:01.000 --> 00:05.000
        This is the Harbour Bell. Two ounces of gin and half an ounce of fall or num.

        00:05.000 --> 00:09.000
        And three quarters of honey syrup. For the honey syrup I do three parts honey to one water.

        00:09.000 --> 00:13.000
        Shake it for ten seconds and strain it into a coupe.
        """;

    private readonly TempHome home = new();

    public void Dispose() => home.Dispose();

    [Fact]
    public void A_talk_says_when_and_in_which_words_each_line_was_heard() =>
        Golden.Check("read-talk-json", home.Run("read", home.Write("talk.vtt", Talk), "--json").Out);
}

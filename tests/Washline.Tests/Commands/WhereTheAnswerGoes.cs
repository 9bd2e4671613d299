using Washline.App;
using Washline.Tests.Storage;

namespace Washline.Tests.Commands;

public sealed class WhereTheAnswerGoes
{
    [Theory]
    [InlineData("bar", "list")]
    [InlineData("fit", "Negroni")]
    [InlineData("demo")]
    public void An_answer_that_cannot_be_written_is_told_and_ends_in_one(params string[] line)
    {
        using var home = new TempHome();
        Assert.Equal(0, home.Run("demo").Exit);
        using var error = new StringWriter { NewLine = "\n" };
        using var full = new Full();
        var exit = WashlineProgram.Run([.. line, "--bar", home.Bar], TextReader.Null, full, error);
        Assert.Equal(1, exit);
        Assert.Equal("washline: The answer could not be written: No space left on device  Send it somewhere else, or make room, then run this again.\n", error.ToString());
    }

    [Theory]
    [InlineData("abc")]
    [InlineData("0")]
    [InlineData("99999")]
    [InlineData("1e3")]
    public void A_port_that_is_none_is_told_with_what_was_typed(string port)
    {
        var answer = Typed.Run("open", "--no-browser", "--port", port);
        Assert.Equal((2, $"washline: A port is a number from 1 to 65535; it was {port}.  See 'washline open --help'.\n"), (answer.Exit, answer.Error));
    }

    private sealed class Full : StringWriter
    {
        public override void Write(char value) => throw new IOException("No space left on device");

        public override void Write(string? value) => throw new IOException("No space left on device");

        public override void WriteLine(string? value) => throw new IOException("No space left on device");
    }
}

using System.Text;
using Washline.Tests.Commands;

namespace Washline.Tests.Storage;

public sealed class FileTextTests : IDisposable
{
    private const string Sour = "Sour Léman\n\n1½ oz gin\n¾ oz lemon juice\n¾ oz simple syrup\n\nmethod: shake 12 s\n";
    private readonly TempHome home = new();

    public void Dispose() => home.Dispose();

    [Theory]
    [InlineData("utf-8", false)]
    [InlineData("utf-8", true)]
    [InlineData("utf-16", true)]
    [InlineData("utf-16", false)]
    [InlineData("utf-16BE", true)]
    [InlineData("utf-16BE", false)]
    [InlineData("utf-32", true)]
    [InlineData("iso-8859-1", false)]
    public void In_whatever_encoding_it_is_the_same_drink(string encoding, bool mark)
    {
        var letters = Encoding.GetEncoding(encoding);
        File.WriteAllBytes(home.Path("sour.txt"), [.. mark ? letters.GetPreamble() : [], .. letters.GetBytes(Sour)]);
        var answer = home.Run("read", home.Path("sour.txt"), "--to", "text");
        Assert.Equal((0, Sour), (answer.Exit, answer.Out));
        var said = encoding switch { "iso-8859-1" => "it was read as Windows-1252 (Latin-1).", "utf-16" when !mark => "it was read as UTF-16.", "utf-16BE" when !mark => "it was read as UTF-16 with the high byte first.", _ => "" };
        if (said.Length == 0) Assert.Equal("", answer.Error);
        else Assert.Contains(said + "  If letters look wrong, save it as UTF-8 and read it again.", answer.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_few_broken_bytes_do_not_turn_the_rest_into_other_letters()
    {
        File.WriteAllBytes(home.Path("sour.txt"), [.. Encoding.UTF8.GetBytes(Sour), .. "note: caf"u8, 0xE9, (byte)'\n']);
        var answer = home.Run("read", home.Path("sour.txt"), "--to", "text");
        Assert.StartsWith("Sour Léman\n\n1½ oz gin\n", answer.Out, StringComparison.Ordinal);
        Assert.Contains("holds 1 byte that is no UTF-8", answer.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(new byte[] { 0x89, 0x50, 0x4E, 0x47, 13, 10, 26, 10, 0, 0 })]
    [InlineData(new byte[] { 0xFF, 0xD8, 0xFF, 0xE0 })]
    [InlineData(new byte[] { 0x25, 0x50, 0x44, 0x46, 0x2D })]
    [InlineData(new byte[] { 0, 1, 2, 3, 4, 5, 6, 7, 8, 0, 1, 2, 3 })]
    public void What_is_no_text_is_refused_with_a_sentence(byte[] bytes)
    {
        File.WriteAllBytes(home.Path("thing.bin"), bytes);
        var answer = home.Run("read", home.Path("thing.bin"));
        Assert.Equal(new Typed(1, "", $"washline: The file '{home.Path("thing.bin")}' is no text.  Read a text, a page, captions or recipe data; of a picture or a document, copy the words out first.\n"), answer);
    }

    [Fact]
    public void Nulls_and_invisible_letters_in_a_text_are_read_over()
    {
        File.WriteAllText(home.Path("sour.txt"), "Sour\u200B Tide\0\n\n60\u200Aml\u2060gin\0\n\u202E20 ml lime juice\u202C\n");
        var answer = home.Run("read", home.Path("sour.txt"), "--to", "text");
        Assert.Equal((0, "Sour Tide\n\n60 ml gin\n20 ml lime juice\n", ""), (answer.Exit, answer.Out, answer.Error));
    }

    [Fact]
    public void An_endless_file_is_read_no_further_than_a_text_reaches()
    {
        if (!File.Exists("/dev/zero")) return;
        var answer = home.Run("read", "/dev/zero");
        Assert.Equal((1, ""), (answer.Exit, answer.Out));
        Assert.Contains("is larger than 20 MB.  Split it, and read its parts.", answer.Error, StringComparison.Ordinal);
    }
}

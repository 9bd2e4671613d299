using System.Formats.Tar;
using System.IO.Compression;
using System.Text;
using System.Text.Json;
using Washline.Tests.Storage;

namespace Washline.Tests.Commands;

public sealed class ReadManyTests : IDisposable
{
    private const string Sour = "Gin Sour\n\n60 ml gin\n30 ml lemon juice\n20 ml simple syrup\n\nmethod: shake 12 s\n";
    private const string Page = "<!doctype html><script type=\"application/ld+json\">{\"@type\":\"Recipe\",\"name\":\"Rum Sour\",\"recipeIngredient\":[\"60 ml light rum\",\"30 ml lime juice\"]}</script>";
    private const string Rough = "Rough Sour\n\n60 ml gin\n30 ml glowing moon jelly\n";
    private readonly TempHome home = new();

    public void Dispose() => home.Dispose();

    [Fact]
    public void A_folder_is_read_file_by_file_with_a_closing_count()
    {
        Directory.CreateDirectory(home.Path("notes/deeper"));
        home.Write("notes/a.txt", Sour);
        home.Write("notes/deeper/b.html", Page);
        home.Write("notes/c.txt", Rough);
        home.Write("notes/.hidden", "not looked at");
        File.WriteAllBytes(home.Path("notes/photo.png"), [0x89, 0x50, 0x4E, 0x47, 1, 2, 3]);
        File.CreateSymbolicLink(home.Path("notes/link.txt"), "/etc/passwd");
        var answer = home.Run("read", home.Path("notes"));
        Assert.Equal(1, answer.Exit);
        Assert.StartsWith("a.txt\n\nGin Sour\n", answer.Out, StringComparison.Ordinal);
        Assert.Contains("\ndeeper/b.html\n\nRum Sour\n", answer.Out, StringComparison.Ordinal);
        Assert.EndsWith("\n3 files read, 2 passed over: 3 specs, 7 lines, 3 problems.\n", answer.Out, StringComparison.Ordinal);
        Assert.Equal(
        [
            "c.txt:4:7  “glowing moon jelly” is not in the catalogue.  Write a kind that is, such as `rye whiskey`, or say once what it is: `washline bar name \"glowing moon jelly\" --kind KIND`. The line is kept as it stands.",
            "link.txt:1:1  It is a link to another file; it was passed over.  Read that file by itself.",
            "photo.png:1:1  It is no text.  Read a text, a page, captions or recipe data; of a picture or a document, copy the words out first.",
        ], answer.Error.TrimEnd('\n').Split('\n'));
    }

    [Theory]
    [InlineData("specs.zip")]
    [InlineData("specs.tar")]
    [InlineData("specs.tar.gz")]
    [InlineData("specs.tgz")]
    public void An_archive_is_read_like_a_folder_and_its_tricks_are_told(string name)
    {
        Packed(name, ("a.txt", Sour), ("../../outside.txt", Sour), ("/etc/absolute.txt", Sour), ("in\u001B[31mred.txt", Sour), ("pages/b.html", Page), ("more.zip", "PK\u0003\u0004and so on"));
        var answer = home.Run("read", home.Path(name), "--json");
        using var json = JsonDocument.Parse(answer.Out);
        Assert.Equal(["a.txt", "in?[31mred.txt", "pages/b.html"], json.RootElement.GetProperty("files").EnumerateArray().Select(f => f.GetProperty("file").GetString()));
        Assert.Equal((3, 3, 3, 8), (Count("files"), Count("passedOver"), Count("specs"), Count("lines")));
        Assert.Contains("Its name leads out of the archive; it was passed over.", answer.Error, StringComparison.Ordinal);
        Assert.Contains("more.zip:1:1  It is an archive within; it was passed over.", answer.Error, StringComparison.Ordinal);
        Assert.DoesNotContain('\u001B', answer.Error + answer.Out);
        Assert.False(File.Exists(home.Path("../../outside.txt")));

        int Count(string what) => json.RootElement.GetProperty("count").GetProperty(what).GetInt32();
    }

    [Fact]
    public void A_zip_that_inflates_without_end_is_passed_over_and_the_rest_is_read()
    {
        using (var file = File.Create(home.Path("bomb.zip")))
        using (var zip = new ZipArchive(file, ZipArchiveMode.Create))
        {
            using (var zeros = zip.CreateEntry("bomb.txt").Open()) for (var i = 0; i < 15; i++) zeros.Write(new byte[1_000_000]);
            using (var good = new StreamWriter(zip.CreateEntry("good.txt").Open())) good.Write(Sour);
        }

        Assert.True(new FileInfo(home.Path("bomb.zip")).Length < 400_000);
        var answer = home.Run("read", home.Path("bomb.zip"));
        Assert.Contains("bomb.txt:1:1  It inflates to more than 200 times its size; it was passed over.", answer.Error, StringComparison.Ordinal);
        Assert.EndsWith("1 file read, 1 passed over: 1 spec, 3 lines, 1 problem.\n", answer.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_tar_that_unpacks_without_end_is_left_where_it_passes_the_limit()
    {
        using (var file = File.Create(home.Path("bomb.tgz")))
        using (var packed = new GZipStream(file, CompressionLevel.Fastest))
        using (var tar = new TarWriter(packed))
        {
            tar.WriteEntry(Entry("good.txt", Sour));
            for (var i = 0; i < 600; i++) tar.WriteEntry(new PaxTarEntry(TarEntryType.RegularFile, $"{i}.txt") { DataStream = new MemoryStream(new byte[1_000_000]) });
        }

        var answer = home.Run("read", home.Path("bomb.tgz"));
        Assert.Contains("There are more than 200 MB in it; from here on nothing was read.", answer.Error, StringComparison.Ordinal);
        Assert.Contains("Gin Sour", answer.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("broken.zip")]
    [InlineData("broken.tar.gz")]
    public void A_broken_archive_is_refused_with_a_sentence(string name)
    {
        home.Write(name, "this is no archive");
        var answer = home.Run("read", home.Path(name));
        Assert.Equal((1, ""), (answer.Exit, answer.Out));
        Assert.StartsWith($"washline: The archive '{home.Path(name)}' could not be opened: ", answer.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void An_archive_that_breaks_off_keeps_what_came_before()
    {
        Packed("cut.tar", ("a.txt", Sour), ("b.txt", Sour));
        File.WriteAllBytes(home.Path("cut.tar"), File.ReadAllBytes(home.Path("cut.tar"))[..1600]);
        var answer = home.Run("read", home.Path("cut.tar"));
        Assert.Equal(1, answer.Exit);
        Assert.StartsWith("a.txt\n\nGin Sour\n", answer.Out, StringComparison.Ordinal);
        Assert.Contains("could not be read: ", answer.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void What_a_folder_holds_goes_out_as_one_document_that_reads_back_equal()
    {
        Packed("specs.zip", ("a.txt", Sour), ("b.html", Page), ("c.txt", "Deep Sour\n\n60 ml gin\n30 ml lime juice\n\nmethod: shake 9 s\nmaker: Ines Prado\npass on: no\n"));
        var data = home.Run("read", home.Path("specs.zip"), "--to", "jsonld");
        Assert.Equal((0, "washline: “Deep Sour” is not to be passed on.  Keep what is written here in the house, or ask Ines Prado first.\n3 files read: 3 specs, 7 lines, 0 problems.\n"), (data.Exit, data.Error));
        var text = home.Run("read", home.Path("specs.zip"), "--to", "text").Out;
        Assert.Equal(text, home.Run("read", home.Write("again.json", data.Out), "--to", "text").Out);
        Assert.Equal(data.Out, home.Run("read", home.Write("again.txt", text), "--to", "jsonld").Out);
    }

    [Fact]
    public void Every_spec_of_the_demo_goes_out_and_comes_back()
    {
        var demo = House.Path("src", "Washline.App", "Demo", "specs");
        var text = home.Run("read", demo, "--to", "text");
        var back = home.Run("read", home.Write("demo.json", home.Run("read", demo, "--to", "jsonld").Out), "--to", "text");
        Assert.Equal((0, text.Out), (back.Exit, back.Out));
        Assert.Contains("15 files read: 15 specs, ", text.Error, StringComparison.Ordinal);
    }

    private void Packed(string name, params (string Name, string Text)[] files)
    {
        using var file = File.Create(home.Path(name));
        if (name.EndsWith(".zip", StringComparison.Ordinal))
        {
            using var zip = new ZipArchive(file, ZipArchiveMode.Create);
            foreach (var (inside, text) in files)
            {
                using var entry = zip.CreateEntry(inside).Open();
                entry.Write(Encoding.UTF8.GetBytes(text));
            }

            return;
        }

        using Stream packed = name.EndsWith("gz", StringComparison.Ordinal) ? new GZipStream(file, CompressionLevel.Fastest) : file;
        using var tar = new TarWriter(packed);
        foreach (var (inside, text) in files) tar.WriteEntry(Entry(inside, text));
    }

    private static PaxTarEntry Entry(string name, string text) => new(TarEntryType.RegularFile, name) { DataStream = new MemoryStream(Encoding.UTF8.GetBytes(text)) };
}

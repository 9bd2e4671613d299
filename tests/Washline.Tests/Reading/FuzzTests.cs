namespace Washline.Tests.Reading;

/// <summary>A few thousand texts in every run; <c>./test --fuzz N [SECONDS]</c> reads N with each reader, all at once, and leaves a report.</summary>
public class FuzzTests
{
    private const int Few = 1200;
    private static readonly string[] Readers = ["Written", "MenuLine", "Spoken", "Captions", "RecipeData", "Encodings", "Archives"];
    private static readonly long? Many = House.Number("WASHLINE_FUZZ");

    private static readonly Lazy<Dictionary<string, Task<FuzzRun>>> Asked = new(() => Readers.ToDictionary(r => r, r => Task.Factory.StartNew(() =>
    {
        var run = Run(r, Many!.Value, TimeSpan.FromSeconds(House.Number("WASHLINE_FUZZ_SECONDS") ?? 86_400));
        lock (Readers) File.AppendAllText(House.Path("artifacts", "fuzz.txt"), run.Report + "\n");
        return run;
    }, CancellationToken.None, TaskCreationOptions.LongRunning, TaskScheduler.Default)));

    public static TheoryData<string> All_readers => [.. Readers];

    [Theory]
    [MemberData(nameof(All_readers))]
    public async Task Whatever_is_put_in_is_answered_and_no_word_is_dropped(string reader)
    {
        var run = Many is null ? Run(reader, Few, TimeSpan.FromSeconds(120)) : await Asked.Value[reader];
        Assert.True(run.Different == 0, run.Report);
        Assert.True(run.Done > (Many is null ? 100 : 0), run.Report);
    }

    // A header of the archive that its reader calls an invalid operation.
    [Fact]
    public void A_seed_that_once_fell_is_answered() => Assert.Equal(0, FuzzReaders.Of("Archives").Run(20_444_823, 1, TimeSpan.FromSeconds(60)).Different);

    private static FuzzRun Run(string reader, long count, TimeSpan time) =>
        FuzzReaders.Of(reader).Run((int)(House.Number("WASHLINE_FUZZ_SEED") ?? 20_000_101), count, time);
}

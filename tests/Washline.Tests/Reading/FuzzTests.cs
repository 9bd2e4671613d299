using System.Globalization;
using Washline.Reading;

namespace Washline.Tests.Reading;

/// <summary>A few thousand texts in every run; <c>./test --fuzz N [SECONDS]</c> reads N of each form and leaves a report.</summary>
public class FuzzTests
{
    private static readonly Lock Door = new();

    [Theory]
    [InlineData(TextForm.Written)]
    [InlineData(TextForm.MenuLine)]
    [InlineData(TextForm.Spoken)]
    [InlineData(TextForm.Captions)]
    [InlineData(TextForm.RecipeData)]
    public void Whatever_is_put_in_is_answered_and_no_word_is_dropped(TextForm form)
    {
        var many = Number("WASHLINE_FUZZ");
        var run = new FuzzRun(form, (int)(Number("WASHLINE_FUZZ_SEED") ?? 20_000_101), many ?? 1200, TimeSpan.FromSeconds(many is null ? 120 : Number("WASHLINE_FUZZ_SECONDS") ?? 86_400));
        run.Run();
        if (many is not null)
        {
            lock (Door) File.AppendAllText(House.Path("artifacts", "fuzz.txt"), run.Report + "\n");
        }

        Assert.True(run.Different == 0, run.Report);
        Assert.True(run.Done > (many is null ? 100 : 0), run.Report);
    }

    private static long? Number(string variable) =>
        long.TryParse(Environment.GetEnvironmentVariable(variable), CultureInfo.InvariantCulture, out var number) ? number : null;
}

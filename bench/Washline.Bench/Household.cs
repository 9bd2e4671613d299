using Washline.App;
using Washline.App.Storage;
using Washline.Drinks;
using Washline.Reading;

namespace Washline.Bench;

/// <summary>The made-up household, laid out in a bar file that is gone again afterwards.</summary>
internal static class Household
{
    public static Bar Bar()
    {
        var folder = Directory.CreateTempSubdirectory("washline-bench-");
        try
        {
            var file = BarFile.Open(Path.Combine(folder.FullName, "bar.washline"));
            Demo.LayOut(file);
            return file.Load();
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    public static Spec Spec(string title) => Bar().Spec(title)!;

    public static string Text(string title) => SpecText.Write(Spec(title));

    public static IEnumerable<string> Texts() => Bar().Specs.Select(SpecText.Write);
}

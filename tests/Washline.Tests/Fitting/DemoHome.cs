using Washline.App.Storage;
using Washline.Drinks;
using Washline.Reading;
using Washline.Tests.Storage;

namespace Washline.Tests.Fitting;

/// <summary>The made-up household.</summary>
public static class DemoHome
{
    public static Bar Bar { get; } = LaidOut();

    public static IReadOnlyList<Spec> Specs => Bar.Specs;

    public static Spec Spec(string title) => Specs.Single(s => s.Title == title);

    public static Spec Read(string text) => Assert.Single(Draft.Read(text, Kinds.Catalogue).Specs);

    private static Bar LaidOut()
    {
        using var home = new TempHome();
        Assert.Equal(0, home.Run("demo").Exit);
        return BarFile.Open(home.Bar).Load();
    }
}

using Washline.Drinks;
using Washline.Reading;

namespace Washline.Tests.Storage;

/// <summary>Whether two bars hold the same, thing by thing and in the same order.</summary>
public static class SameBar
{
    public static void Check(Bar expected, Bar actual)
    {
        Assert.Equal(expected.Bottles, actual.Bottles);
        Assert.Equal(expected.HouseMade, actual.HouseMade);
        Assert.Equal(expected.Fruit, actual.Fruit);
        Assert.Equal(expected.Tools, actual.Tools);
        Assert.Equal(expected.Glasses, actual.Glasses);
        Assert.Equal(expected.Measures, actual.Measures);
        Assert.Equal(expected.Words, actual.Words);
        Assert.Equal(expected.Settings, actual.Settings);
        Assert.Equal(expected.Specs.Select(s => s.Title), actual.Specs.Select(s => s.Title));
        Assert.Equal(expected.Specs.Select(SpecText.Write), actual.Specs.Select(SpecText.Write));
        Assert.Equal(expected.HousePours.Select(p => (p.Spec, p.Note)), actual.HousePours.Select(p => (p.Spec, p.Note)));
        Assert.Equal(expected.HousePours.Select(p => string.Join('|', p.Lines)), actual.HousePours.Select(p => string.Join('|', p.Lines)));
    }
}

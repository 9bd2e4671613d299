using Washline.Drinks;
using Washline.Mixtures;
using Washline.Reading;

namespace Washline.Tests.Drinks;

/// <summary>The slopes by which bands are drawn, against a full run for every end of every input of every spec of the demo.</summary>
public class BandsBySlopes
{
    public static TheoryData<string> Specs => [.. Directory.EnumerateFiles(House.Path("src", "Washline.App", "Demo", "specs")).Select(f => Path.GetFileName(f)!).Order()];

    [Theory]
    [MemberData(nameof(Specs))]
    public void Melt_and_temperature_answer_as_a_full_run_does(string file)
    {
        var (pours, service) = Made(file);
        var (first, last) = (ServedDrink.Sum(pours, false), ServedDrink.Sum(pours, true));
        var response = Response.Of(first, last, service);
        foreach (var pour in pours)
        {
            foreach (var changed in Ends(pour))
            {
                var more = changed.Mixture + pour.Mixture * -1;
                var (a, b) = pour.Last ? (first, last + more) : (first + more, last);
                var (quick, full) = (response.For(a, b, service), Meeting.Of(a, b, service, true).After(service.Seconds));
                // A quarter more or less soda on the same ice bends more than a jigger's slip.
                var bend = pour.Last ? 0.25 : 0.1;
                Assert.Equal(full.MeltG, quick.MeltG, 0.05 + bend * Math.Abs(full.MeltG - response.Middle.MeltG));
                Assert.Equal(full.TemperatureC, quick.TemperatureC, 0.03 + bend * Math.Abs(full.TemperatureC - response.Middle.TemperatureC));
                Assert.Equal(full.Liquid.Ethanol, quick.Liquid.Ethanol, 1e-9);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Specs))]
    public void Time_and_freezer_ice_answer_as_a_full_run_does(string file)
    {
        var (pours, service) = Made(file);
        var (first, last) = (ServedDrink.Sum(pours, false), ServedDrink.Sum(pours, true));
        var response = Response.Of(first, last, service with { IceWet = null });
        var met = Meeting.Of(first, last, service, true);
        Near(met.After(service.Seconds), response.Middle, 0.0001);
        if (service.Technique != Technique.Blend)
        {
            Near(met.After(0.75 * service.Seconds), response.Sooner, 0.1);
            Near(met.After(1.25 * service.Seconds), response.Later, 0.1);
        }

        Near(Meeting.Of(first, last, service, false).After(service.Seconds), response.Freezer, 0.0001);
    }

    [Theory]
    [MemberData(nameof(Specs))]
    public void The_drink_with_bands_is_the_drink_without(string file)
    {
        var (pours, service) = Made(file);
        var (with, without) = (ServedDrink.Of(pours, service), ServedDrink.Run(pours, service));
        Assert.Equal(without.Sip, with.Served);
        Assert.Equal(without, with.Serving);
    }

    [Fact]
    public void Longer_on_the_ice_takes_no_more_memory()
    {
        var (pours, service) = Made("04-martini.txt");
        long Bytes(double seconds)
        {
            var longer = service with { Seconds = seconds };
            ServedDrink.Of(pours, longer);
            var before = GC.GetAllocatedBytesForCurrentThread();
            ServedDrink.Of(pours, longer);
            return GC.GetAllocatedBytesForCurrentThread() - before;
        }

        Assert.InRange(Bytes(400), 1, 1.2 * Bytes(20));
    }

    private static void Near(Chilled expected, Chilled ours, double grams)
    {
        Assert.Equal(expected.MeltG, ours.MeltG, grams);
        Assert.Equal(expected.TemperatureC, ours.TemperatureC, 0.3 * grams);
    }

    private static (IReadOnlyList<Pour> Pours, Service Service) Made(string file)
    {
        var spec = Draft.Read(File.ReadAllText(House.Path("src", "Washline.App", "Demo", "specs", file)), Kinds.Catalogue).Specs[0];
        var service = Service.Of(spec, TradeGlasses.For(spec.Glass, spec.Ice, spec.Method.Technique), true);
        return (Written.Pours(spec, service), service);
    }

    private static IEnumerable<Pour> Ends(Pour pour) =>
    [
        pour with { Millilitres = Washline.Measures.Band.Exactly(pour.Millilitres.Low) }, pour with { Millilitres = Washline.Measures.Band.Exactly(pour.Millilitres.High) },
        pour.With(pour.Strength.Low, null, null), pour.With(pour.Strength.High, null, null),
        pour.With(null, pour.Sugar.Low, null), pour.With(null, pour.Sugar.High, null),
        pour.With(null, null, pour.Acid.Low), pour.With(null, null, pour.Acid.High),
    ];
}

using CsCheck;
using Washline.Mixtures;

namespace Washline.Tests.Laws;

public class Courses
{
    private static readonly Gen<double> Seconds = Gen.Double[5, 90];

    [Fact]
    public void A_course_has_at_most_sixty_points_from_the_first_moment_on() => Gen.Select(Pours.Drink, Pours.Ice, Pours.Technique, Seconds).Sample((drink, ice, technique, seconds) =>
    {
        var course = ChillCourse.Of(technique, drink, 20, ice, seconds);
        Assert.InRange(course.Points.Count, 2, 60);
        Assert.Equal(0, course.Points[0].Seconds);
        Assert.Equal(20, course.Points[0].TemperatureC, 2.5); // the heat of mixing with the film of water is felt at once
        Assert.True(course.Points[^1].Seconds > 0.95 * seconds);
    }, iter: 100);

    [Fact]
    public void Its_given_time_is_the_drink_that_is_served() => Gen.Select(Pours.Drink, Pours.Ice, Pours.Technique, Seconds).Sample((drink, ice, technique, seconds) =>
    {
        var (usual, served) = (ChillCourse.Of(technique, drink, 20, ice, seconds).Usual, Chilled.By(technique, drink, 20, ice, seconds));
        Assert.Equal(served.MeltG, usual.MeltG, 0.002 * Math.Max(served.MeltG, 0.1 * drink.Mass));
        Assert.Equal(served.TemperatureC, usual.TemperatureC, 0.025);
        Assert.Equal(served.Liquid.Strength.Percent, usual.StrengthPercent, 0.03);
    }, iter: 100);

    [Fact]
    public void Along_a_course_on_wet_ice_the_drink_only_thins_and_grows() => Gen.Select(Pours.Drink, Pours.Technique, Seconds).Sample((drink, technique, seconds) =>
    {
        var points = ChillCourse.Of(technique, drink, 20, new Ice(200, 32, 0), seconds).Points;
        foreach (var (before, after) in points.Zip(points.Skip(1)))
        {
            Assert.True(after.StrengthPercent <= before.StrengthPercent + 1e-4);
            Assert.True(after.VolumeMl >= before.VolumeMl - 1e-3);
        }
    }, iter: 100);

    [Fact]
    public void After_the_stop_an_eighth_of_the_usual_time_is_never_worth_a_tenth_of_a_degree() =>
        Gen.Select(Pours.Drink, Pours.Ice, Pours.Technique, Gen.Double[0, 1]).Sample((drink, ice, technique, where) =>
        {
            var pace = ChillCourse.PaceSeconds(technique);
            if (ChillCourse.Of(technique, drink, 20, ice, 8 * pace).StopSeconds is not { } stop) return;
            var t = stop + where * (47 * pace - stop);
            var fall = Chilled.By(technique, drink, 20, ice, t).TemperatureC - Chilled.By(technique, drink, 20, ice, t + pace).TemperatureC;
            Assert.True(fall < ChillCourse.WorthC + 0.03, $"{technique} still falls {fall:0.000} °C after {t:0.0} s; stop was {stop:0.0} s");
        }, iter: 100);

    [Fact]
    public void Before_the_stop_it_was_still_worth_it() => Gen.Select(Pours.Drink, Pours.Ice, Pours.Technique).Sample((drink, ice, technique) =>
    {
        var pace = ChillCourse.PaceSeconds(technique);
        if (ChillCourse.Of(technique, drink, 20, ice, 8 * pace).StopSeconds is not { } stop || stop == 0) return;
        var t = Math.Max(0, stop - pace / 3);
        var fall = Chilled.By(technique, drink, 20, ice, t).TemperatureC - Chilled.By(technique, drink, 20, ice, t + pace).TemperatureC;
        Assert.True(fall > ChillCourse.WorthC - 0.03, $"{technique} falls only {fall:0.000} °C after {t:0.0} s; stop was {stop:0.0} s");
    }, iter: 100);

    [Fact]
    public void A_sour_is_shaken_for_a_quarter_of_a_minute_and_no_longer()
    {
        var sour = Pours.Sour;
        var course = ChillCourse.Of(Technique.Shake, sour, 20, new Ice(200, 32, 0), 12);
        Assert.InRange(course.StopSeconds!.Value, 11, 16);
    }

    [Theory]
    [InlineData(Technique.NoIce)]
    [InlineData(Technique.Blend)]
    public void Without_ice_or_from_a_blender_there_is_a_single_point(Technique technique)
    {
        var course = ChillCourse.Of(technique, Pours.Sour, 20, new Ice(170, 8, -18), 20);
        Assert.Single(course.Points);
        Assert.Null(course.StopSeconds);
        Assert.Equal(technique == Technique.Blend ? -7 : 20, course.Usual.TemperatureC, 0.3);
    }
}

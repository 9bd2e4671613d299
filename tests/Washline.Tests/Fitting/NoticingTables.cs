using Washline.Drinks;
using Washline.Measures;

namespace Washline.Tests.Fitting;

/// <summary>The JND scale against the check values of its reference.</summary>
/// <remarks>
/// Source: the reference table for noticing, section 1, check values for the default constants (S 8 and A 0.85 g/100 mL, E 16 %, T −5 °C, V 150 mL);
/// the program counts in g/L. Printed to four and three places.
/// </remarks>
public class NoticingTables
{
    private static readonly Sip Reference = new(150, 16, 80, 80, 8.5, -5);

    [Fact]
    public void Steps_from_nothing_agree_with_the_reference()
    {
        Assert.Equal(10.7296, Jnd.OfSugar(80), 5e-5);
        Assert.Equal(12.9548, Jnd.OfAcid(8.5), 5e-5);
        Assert.Equal(13.8776, Jnd.OfStrength(16), 5e-5);
        Assert.Equal(6.0615, Jnd.Count(20, 0.30, 2), 5e-5);
        Assert.Equal(8.8137, Jnd.Count(3, 0.10, 0.3), 5e-5);
    }

    public static TheoryData<string, double, double, double, double, double, double> Examples => new()
    {
        { "sugar −10 %", 150, 16, 72, 8.5, -5, 0.643 },
        { "acid +10 %", 150, 16, 80, 9.35, -5, 0.520 },
        { "strength +2 points", 150, 18, 80, 8.5, -5, 1.127 },
        { "5 °C warmer", 150, 16, 80, 8.5, 0, 1.414 },
        { "volume +10 %", 165, 16, 80, 8.5, -5, 0.522 },
        { "a tenth more water", 165, 16 / 1.1, 80 / 1.1, 8.5 / 1.1, -5, 1.290 },
    };

    [Theory]
    [MemberData(nameof(Examples))]
    public void The_distance_of_a_sour_and_its_neighbour_agrees_with_the_reference(string change, double ml, double percent, double sugar, double acid, double celsius, double distance)
    {
        Assert.NotEmpty(change);
        var moves = Reference.To(new Sip(ml, percent, sugar, sugar, acid, celsius));
        Assert.Equal(distance, Math.Sqrt(moves.Square), 5e-4);
        Assert.Equal(moves.Square, moves.All.Sum(m => m.Weight * m.Jnd * m.Jnd), 1e-12);
    }

    [Fact]
    public void A_drink_does_not_differ_from_itself_and_the_way_back_is_as_long()
    {
        var other = new Sip(140, 19, 65, 66, 7.1, -2);
        Assert.Equal(0, Reference.To(Reference).Square);
        Assert.Equal(Reference.To(other).Square, other.To(Reference).Square, 1e-12);
    }

    [Fact]
    public void Near_nothing_the_floor_keeps_a_trace_of_sugar_from_being_another_drink() =>
        Assert.InRange(Jnd.OfSugar(3.5) - Jnd.OfSugar(0), 0.69, 0.71);
}

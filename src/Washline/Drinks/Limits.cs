using System.Globalization;
using Washline.Mixtures;

namespace Washline.Drinks;

/// <summary>Where a drink leaves the range for which the models of docs/physics.md were set or checked: what is taken instead, in a sentence each.</summary>
public static class Limits
{
    private const double WeakestSet = 100 * IceContact.Weakest, StrongestSet = 100 * IceContact.Strongest; // % vol before ice that the rates of shake and stir were set on
    private const double MostEthanol = 0.60; // of ethanol and water by mass, the end of the freezing table
    private const double MostSugar = 0.643; // of sugar and water, likewise
    private const double MostAcid = 0.06; // of acid and water: beyond, the freezing point is 0.6 °C off and more
    private const double MostSalt = 0.20; // of salt and water: the second of two points from memory
    private const double ColdestHeat = -20; // °C, the end of the heat capacities

    /// <summary>The sentences for that drink, as served; none where every model holds.</summary>
    public static IReadOnlyList<string> Of(IReadOnlyList<Pour> pours, Service service)
    {
        var (first, last) = (ServedDrink.Sum(pours, last: false), ServedDrink.Sum(pours, last: true));
        if (first.Mass + last.Mass <= 0) return ["There is nothing in it that can be counted."];
        var said = new List<string>();
        var meeting = Meeting.Of(first, last, service, service.IceWet ?? true);
        if (meeting.Happens) Meet(said, meeting, service);
        var serving = ServedDrink.Run(pours, service);
        Hold(said, serving.Served, serving.TemperatureC);
        return said;
    }

    private static void Meet(List<string> said, in Meeting meeting, Service service)
    {
        var percent = meeting.Drink.Strength.Percent;
        var edge = percent < WeakestSet ? WeakestSet : StrongestSet;
        if (service.Technique is Technique.Shake or Technique.Stir && Math.Abs(percent - edge) > 0.05 && percent is < WeakestSet or > StrongestSet)
            said.Add(Say($"The rates of shaking and stirring were set on drinks of {WeakestSet} to {StrongestSet} %; what meets this ice has {percent:0.#} %, and the rate for {edge} % is taken."));
        if (meeting.Ice.Grams >= Ice.MostG)
            said.Add(Say($"No more than {Ice.MostG / 1000} kg of ice are followed at once: make so much drink in several goes."));
        if (service.Technique != Technique.Blend && service.Seconds >= Service.MostSeconds)
            said.Add(Say($"No drink is followed on its ice for more than {Service.MostSeconds} s: what comes later is not in the numbers."));
    }

    private static void Hold(List<string> said, in Mixture drink, double celsius)
    {
        double Share(double grams, double water) => grams <= 0 ? 0 : grams / (grams + water);
        if (drink.Water <= 0) said.Add("There is no water in it: its temperature on ice is a guess, and it is no drink yet.");
        else if (Share(drink.Sugars.Total, drink.Water) is > MostSugar and var sugar)
            said.Add(Say($"The tables of syrup end at {100 * MostSugar} % sugar in water; this holds {100 * sugar:0} %, and its freezing point is drawn on from there."));
        if (Share(drink.Ethanol, drink.Water) is > MostEthanol and var ethanol)
            said.Add(Say($"The tables of freezing points end at {100 * MostEthanol} % alcohol by mass; this holds {100 * ethanol:0} %, and the freezing point there is taken."));
        if (drink.Water > 0 && Share(drink.Acid, drink.Water) is > MostAcid and var acid)
            said.Add(Say($"Freezing points hold to {100 * MostAcid} % acid in water; this holds {100 * acid:0} %, and may be colder than told."));
        if (drink.Water > 0 && Share(drink.Solids.Salt, drink.Water) is > MostSalt and var salt)
            said.Add(Say($"Freezing points of brine were set to {100 * MostSalt} % salt; this holds {100 * salt:0} %."));
        if (celsius < ColdestHeat)
            said.Add(Say($"Heat capacities are known to {ColdestHeat} °C; this drink comes out at {celsius:0} °C, and they are drawn on from there.").Replace('-', '−'));
    }

    private static string Say(FormattableString sentence) => sentence.ToString(CultureInfo.InvariantCulture);
}

using Washline.Mixtures;

namespace Washline.Drinks;

/// <summary>A drink and the ice it is about to meet.</summary>
/// <param name="Technique">How they meet.</param>
/// <param name="Drink">What meets the ice.</param>
/// <param name="StartC">Its temperature, °C.</param>
/// <param name="Ice">The ice.</param>
/// <param name="Rate">A person's own hand: what the calibrated rate is multiplied by.</param>
internal readonly record struct Meeting(Technique Technique, Mixture Drink, double StartC, Ice Ice, double Rate)
{
    private const double RoomC = 20;

    /// <summary>Whether anything happens with time: there is drink, ice, and a technique that brings them together.</summary>
    public bool Happens => Technique != Technique.NoIce && Ice.Grams > 0 && Drink.Mass > 0 && !Chilled.OnlyTouches(Technique, Drink, StartC, Ice, out _);

    /// <summary>What meets the ice: in the glass everything; in a shaker or mixing glass only what was in it.</summary>
    public static Meeting Of(in Mixture first, in Mixture last, Service service, bool wet)
    {
        var drink = service.InGlass ? first + last : first;
        var start = service.InGlass ? Chilled.Join(first, RoomC, last, Service.FridgeC) : RoomC;
        return new Meeting(service.Technique, drink, start, service.IceFor(drink.Mass, wet), service.Hand.Rate(service.Technique));
    }

    /// <summary>The drink after that many seconds.</summary>
    public Chilled After(double seconds) => Chilled.By(Technique, Drink, StartC, Ice, seconds, Rate);

    /// <summary>The way there, to be followed step by step. Only for what happens, and not for a blender, which runs to balance.</summary>
    public IceRun Begin() => new(Drink, StartC, Ice, IceContact.Of(Technique, Drink, StartC, Ice).Times(Rate));
}

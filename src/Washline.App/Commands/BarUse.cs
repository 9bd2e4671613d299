using System.CommandLine;
using System.Globalization;
using Washline.App.Storage;
using Washline.Drinks;
using Washline.Measures;

namespace Washline.App.Commands;

/// <summary><c>washline bar use</c>: what was poured, pressed or cracked.</summary>
internal static class BarUse
{
    public static Command Make()
    {
        var name = AtHome.NameArgument();
        var amount = new Argument<string[]>("AMOUNT") { Description = "How much: 60ml, 2 oz; a number for fruit.", Arity = ArgumentArity.OneOrMore };
        var command = new Verb("use", "Takes what was used off what is left.", "washline bar use \"The rye\" 60ml", "washline bar use Limes 2") { name, amount };
        command.SetAction(result =>
        {
            object? after = null;
            result.OpenBar().Change(bar =>
            {
                var thing = Used(bar, result.GetRequiredValue(name));
                after = Less(thing, string.Join(' ', result.GetRequiredValue(amount)));
                return Household.With(Household.Without(bar, thing), after);
            });
            return result.Tell("Used", after!);
        });
        return command;
    }

    // Only what stands on the shelf can be used up.
    private static object Used(Bar bar, string name) =>
        Household.Named(bar, name).FirstOrDefault(t => t is Bottle or HouseMade or Fruit) ?? (AtHome.The(bar, name, null) is var thing
            ? throw new Refusal($"{Things.Name(thing)} is a {Things.What(thing)}, which is not used up.", "Name a bottle, something house-made or fruit.")
            : null!);

    private static object Less(object thing, string amount) => thing switch
    {
        Bottle bottle => bottle with { Left = Left(bottle.Name, bottle.Left, amount) },
        HouseMade made => made with { Left = Left(made.Name, made.Left, amount) },
        Fruit fruit => fruit with { Count = Left(fruit, amount) },
        _ => throw new ArgumentOutOfRangeException(nameof(thing), thing, "It is not used up."),
    };

    private static Volume Left(string name, Volume left, string amount)
    {
        if (Quantity.Volume(amount) is not { Millilitres: > 0 } used)
            throw new Refusal($"'{amount}' is not a volume.", "Write it with its unit, such as 60ml, 2oz or 6cl.");
        if (used.Millilitres > left.Millilitres + 0.005)
            throw new Refusal($"Only {left} of {name} is left; {used} is more.", "Use less, or say what is really there: washline bar change NAME --left VOLUME.");
        return Volume.FromMillilitres(Math.Max(0, Math.Round(left.Millilitres - used.Millilitres, 6)));
    }

    private static int Left(Fruit fruit, string amount)
    {
        if (!int.TryParse(amount, NumberStyles.None, CultureInfo.InvariantCulture, out var used) || used < 1)
            throw new Refusal($"'{amount}' is not a number of {fruit.Name}.", "Write a whole number, such as 2.");
        if (used > fruit.Count)
            throw new Refusal($"Only {fruit.Count} of {fruit.Name} {(fruit.Count == 1 ? "is" : "are")} left; {used} is more.", "Use less, or say what is really there: washline bar change NAME --count NUMBER.");
        return fruit.Count - used;
    }
}

using System.Text.RegularExpressions;
using Washline.Drinks;
using Washline.Mixtures;

namespace Washline.Fitting.AtHome;

/// <summary>The maker's way with the tools at home: what is missing, and what a bartender does then. docs/fitting.md has the table.</summary>
internal sealed partial class HomeTools
{
    private const double HandPressed = 0.75; // of what a press brings: a fork and a strong hand; judgement
    private const double Nothing = 0.05; // JND; less is not worth a word
    private const double Half = 0.5; // of a fruit: nobody says less

    private static readonly Dictionary<string, string> FromTheShop = new()
    {
        ["lemon-juice"] = "bottled-lemon-juice",
        ["lime-juice"] = "bottled-lime-juice",
        ["orange-juice"] = "packaged-orange-juice",
        ["blood-orange-juice"] = "packaged-orange-juice",
        ["mandarin-juice"] = "packaged-orange-juice",
        ["grapefruit-juice"] = "packaged-grapefruit-juice",
        ["fresh-pineapple-juice"] = "pineapple-juice",
    };

    private readonly Bar bar;
    private readonly Kinds kinds;
    private readonly List<HomeReason> reasons;
    private readonly string words;

    private HomeTools(Spec spec, ServedDrink asMeant, Bar bar, Kinds kinds, List<HomeReason> reasons)
    {
        (this.bar, this.kinds, this.reasons, Drink) = (bar, kinds, reasons, asMeant);
        words = string.Join(". ", spec.Lines.SelectMany(l => l.Qualifiers.Append(l.Note)).Prepend(spec.Method.Written));
    }

    /// <summary>The maker's drink as far as it has been fitted.</summary>
    private ServedDrink Drink { get; set; }

    /// <summary>The maker's drink made with the tools at home. A home that lists none is taken to have them all.</summary>
    public static ServedDrink Fit(Spec spec, ServedDrink asMeant, Bar bar, Kinds kinds, List<HomeReason> reasons)
    {
        if (bar.Tools.Count == 0) return asMeant;
        var tools = new HomeTools(spec, asMeant, bar, kinds, reasons);
        tools.Ice();
        tools.Vessels();
        tools.Small();
        tools.Juice();
        return tools.Drink;
    }

    /// <summary>Whether one of those is among the tools.</summary>
    internal static bool Has(Bar bar, params string[] names) => bar.Tools.Any(tool => names.Any(name => Told.Holds(tool.Name, name)));

    private bool Has(params string[] names) => Has(bar, names);

    private void Ice()
    {
        if (Drink.Service.Technique == Technique.Blend && !Has("blender", "food processor"))
        {
            var change = Become(Drink.Service with { Technique = Technique.Shake, Seconds = 12, CrushedInside = true, ServedOn = ServedIce.Crushed });
            Add("blender", "blender", "shaker and crushed ice", "No blender at home: shake hard with crushed ice and pour it all in, ice too.",
                $"{(change.DistanceJnd < Nothing ? "It is as cold and as strong." : change.Words)} At the first sip some {Told.Number(change.AtHome.IceDrunkG, "0")} g of the ice are lumps; the blender leaves {Told.Number(change.Meant.IceDrunkG, "0")} g of it as fine slush.", change);
        }

        var service = Drink.Service;
        var on = Drink.Serving.IceInGlassG > 0 ? service.ServedOn : ServedIce.None;
        if ((on == ServedIce.Crushed || service.Technique == Technique.Swizzle || service.CrushedInside) && !Has("ice crusher", "crusher", "crushed ice", "lewis bag", "ice bag", "mallet", "blender"))
        {
            var (meant, cracked) = (Drink, service with { Cracked = true });
            var (why, effect) = ("No ice crusher at home: wrap cubes in a cloth and break them with a rolling pin; the pieces come out coarser, some 20 mm instead of 8", "");
            if (service.Technique == Technique.Swizzle && Longer(cracked) is var longer && longer > service.Seconds)
            {
                var hasty = new Consequence(meant, ServedDrink.Of(meant.Pours, cracked));
                why += $". Churn it {Told.Number(longer, "0")} s";
                effect = $"In the maker’s {Told.Number(service.Seconds, "0")} s {Lower(hasty.Words)} In {Told.Number(longer, "0")} s ";
                cracked = cracked with { Seconds = longer };
            }

            var change = Become(cracked);
            effect += effect.Length > 0 ? Lower(change.Words) : First(change);
            if (change.Standing.Count > 0) effect += " " + Standing(change, "crushed ice would give");
            Add("crushed-ice", "ice crusher", "cloth and rolling pin", why + ".", effect, change, HomeMatter.Ice);
        }

        if (on == ServedIce.LargeCube && !Has("mould", "mold", "large cube", "large cube tray", "ice block", "clear ice", "ice sphere"))
        {
            var change = Become(service with { ServedOn = ServedIce.Cubes });
            Add("large-cube", "large ice mould", "ordinary cubes", "No large ice mould at home: use the biggest cubes there are, fresh and dry.", $"{First(change)} {Standing(change, "one large cube would give")}", change, HomeMatter.Ice);
        }
    }

    private void Vessels()
    {
        var service = Drink.Service;
        switch (service.Technique)
        {
            case Technique.Shake when !Has("shaker", "tin", "shaking tin", "cobbler", "boston"):
                Same("shaker", "shaker", "strong jar with a tight lid", "No shaker at home: a strong jar or a flask with a tight lid does it. Fill it no more than two thirds, and hold it in a cloth.");
                break;
            case Technique.Stir when !Has("mixing glass", "stirring glass", "mixing jug", "jug", "pitcher", "beaker"):
                var tin = Has("shaker", "tin");
                Same("mixing-glass", "mixing glass", tin ? "shaker tin" : "tall glass or jug", $"No mixing glass at home: stir in {(tin ? "the larger half of the shaker" : "any tall glass or jug")}.");
                break;
            case Technique.Swizzle when !Has("swizzle stick", "swizzle"):
                var spoon = Has("barspoon", "bar spoon") ? "barspoon" : "long spoon";
                Same("swizzle-stick", "swizzle stick", spoon, $"No swizzle stick at home: churn with a {spoon}, up and down through the ice, until the glass frosts.");
                break;
        }

        if (service.Technique == Technique.Stir && !Has("barspoon", "bar spoon", "spoon", "stirrer"))
            Same("barspoon", "barspoon", "long spoon", "No barspoon at home: stir with any long spoon, or a chopstick.");
    }

    private void Small()
    {
        var service = Drink.Service;
        var strained = service.Technique == Technique.Stir || (service.Technique == Technique.Shake && !service.DrunkWithIce && !Unstrained().IsMatch(words));
        if (strained && !Has("strainer", "sieve", "cobbler")) Same("strainer", "strainer", "sieve", "No strainer at home: pour through a small sieve, or hold the ice back with a spoon across the mouth.");
        if (strained && FineStrained().IsMatch(words) && !Has("fine strainer", "double strainer", "tea strainer", "fine sieve", "fine mesh", "mesh strainer"))
        {
            Same("fine-strainer", "fine strainer", "tea strainer", "No fine strainer at home: use a tea strainer or a kitchen sieve, or let a few chips of ice float on top.");
        }

        if (Muddled().IsMatch(words) && !Has("muddler", "pestle")) Same("muddler", "muddler", "end of a wooden spoon", "No muddler at home: press with the end of a wooden spoon or rolling pin.");
        if (Charged().IsMatch(words) && !Has("siphon", "soda siphon", "soda maker", "carbonator"))
            Same("siphon", "soda siphon", "bottled soda", "No soda siphon at home: open a fresh bottle of soda, well chilled, and pour it down the side of the glass.", "It holds fewer bubbles; no figure here tells how many. Nothing else changes.");
    }

    // Fruit that somebody has to press; the pour stays the fruit's, and the bottle from the shop is told beside it.
    private void Juice()
    {
        if (Has("juicer", "press", "citrus press", "squeezer", "lemon squeezer", "reamer", "juice extractor")) return;
        foreach (var pour in Drink.Pours.Where(p => FromTheShop.ContainsKey(p.Kind.Id)).DistinctBy(p => p.Kind.Id))
        {
            if (bar.Fruit.FirstOrDefault(f => f.Count > 0 && f.Kind == pour.Kind) is not { } fruit || Pour.Of("", kinds[FromTheShop[pour.Kind.Id]], null, null, null) is not { } shop) continue;
            var change = new Consequence(Drink, ServedDrink.Of([.. Drink.Pours.Select(p => p.Kind == pour.Kind
                ? p with { Name = shop.Kind.Name, Kind = shop.Kind, Strength = shop.Strength, Sugar = shop.Sugar, Acid = shop.Acid, Composition = shop.Composition } : p)], Drink.Service));
            var by = "";
            if (pour.Kind.Piece is { Millilitres.Typical: > 0 } piece && pour.Kind.IsA("citrus-juice"))
            {
                var ml = Drink.Pours.Where(p => p.Kind == pour.Kind).Sum(p => p.Millilitres.Typical);
                by = $" halve the {fruit.Name} and turn a fork in each half, over a sieve. By hand {Told.A(piece.Words[0])} gives some {Told.Number(HandPressed * piece.Millilitres.Typical, "0")} mL where a press brings {Told.Number(piece.Millilitres.Typical, "0")}:"
                    + $" for {Told.Ml(ml)} take {Fruits(ml / (HandPressed * piece.Millilitres.Typical))} {fruit.Name}, not {Fruits(ml / piece.Millilitres.Typical)}.";
            }

            var why = by.Length > 0 ? $"No juicer at home:{by}" : $"No juicer at home: chop {fruit.Name} small, crush it and wring it through a cloth.";
            Add("juicer", "juicer", shop.Kind.Name, why, $"With {shop.Kind.Name} instead, mL for mL: {Lower(change.Words)}", change);
        }
    }

    // Coarser ice cools more slowly: churned until it has given as much water, to five seconds, three times as long at most.
    private double Longer(Service cracked)
    {
        var (meant, seconds) = (Drink.Serving.MeltG, cracked.Seconds);
        while (seconds < 3 * Drink.Service.Seconds && seconds + 5 <= Service.MostSeconds && ServedDrink.Run(Drink.Pours, cracked with { Seconds = seconds }).MeltG < 0.98 * meant) seconds += 5;
        return seconds;
    }

    private static string Fruits(double count) => Told.Number(Math.Max(Half, Math.Ceiling(2 * count - 1e-9) / 2), "0.#").Replace(".5", "½", StringComparison.Ordinal).Replace("0½", "½", StringComparison.Ordinal);

    private static string First(Consequence change) => change.DistanceJnd < Nothing ? "The first sip is the same." : change.Words;

    private static string Lower(string sentence) => char.ToLowerInvariant(sentence[0]) + sentence[1..];

    private static string Standing(Consequence change, string meant)
    {
        var (five, ten) = (change.Standing[0], change.Standing[1]);
        return $"Left standing, the ice gives some {Told.Number(five.AtHomeMl, "0")} mL of water in 5 minutes and {Told.Number(ten.AtHomeMl, "0")} in 10, where {meant} {Told.Number(five.MeantMl, "0")} and {Told.Number(ten.MeantMl, "0")}.";
    }

    private Consequence Become(Service service)
    {
        var change = new Consequence(Drink, ServedDrink.Of(Drink.Pours, service));
        Drink = change.AtHome;
        return change;
    }

    private void Same(string rule, string missing, string instead, string why, string effect = HomeReason.Same) => Add(rule, missing, instead, why, effect, new Consequence(Drink, Drink));

    private void Add(string rule, string missing, string instead, string why, string effect, Consequence change, HomeMatter matter = HomeMatter.Tool) =>
        reasons.Add(new HomeReason { Matter = matter, Rule = rule, Missing = missing, Instead = instead, Why = why, Effect = effect, Consequence = change });

    [GeneratedRegex(@"\b(?:double|fine|twice)[\s-]*strain|\bstrain\w*\s+twice\b", RegexOptions.IgnoreCase)]
    private static partial Regex FineStrained();

    [GeneratedRegex(@"\b(?:dump|unstrained|(?:do not|don['’]t|without)\s+strain\w*|ice and all|open pour)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Unstrained();

    [GeneratedRegex(@"\bmuddl", RegexOptions.IgnoreCase)]
    private static partial Regex Muddled();

    [GeneratedRegex(@"\bs[iy]phon", RegexOptions.IgnoreCase)]
    private static partial Regex Charged();
}

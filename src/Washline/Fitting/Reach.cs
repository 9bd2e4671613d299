namespace Washline.Fitting;

/// <summary>How far from the maker's amount a search looks, as shares of it.</summary>
/// <param name="Least">Below 1.</param>
/// <param name="Most">Above 1.</param>
internal readonly record struct Reach(double Least, double Most)
{
    /// <summary>A bartender who would pour less than 0.7 or more than 1.4 of it makes another drink.</summary>
    public static Reach Usual { get; } = new(0.7, 1.4);

    /// <summary>A drink that is to be drier or lighter may take far less of what is sweet or strong.</summary>
    public static Reach Lighter { get; } = new(0.25, 1.4);

    /// <summary>A riff is another drink on purpose: a liqueur for a spirit may leave little room for the syrup.</summary>
    public static Reach Riffed { get; } = new(0.25, 2);
}

namespace Washline.Fitting;

/// <summary>A part of the candidates: those whose served volume lies between two volumes and that pour only certain choices.</summary>
/// <param name="LowMl">From, mL.</param>
/// <param name="HighMl">To, mL.</param>
/// <param name="Kept">Per line the places in the grid that may be poured.</param>
/// <param name="Shares">Per line how much of each of them is in the mixture with which to begin; any scale.</param>
internal sealed record Stretch(double LowMl, double HighMl, int[][] Kept, double[][] Shares)
{
    /// <summary>All that may come into it, from one candidate on.</summary>
    public static Stretch Whole(int[][] kept, double lowMl, double highMl, int[] from)
    {
        var shares = new double[kept.Length][];
        for (var i = 0; i < kept.Length; i++)
        {
            shares[i] = new double[kept[i].Length];
            if (Array.IndexOf(kept[i], from[i]) is >= 0 and var at) shares[i][at] = 1;
        }

        return new Stretch(lowMl, highMl, kept, shares);
    }

    /// <summary>Whether some line has nothing that may be poured.</summary>
    public bool IsEmpty => Array.Exists(Kept, k => k.Length == 0);

    /// <summary>What is known of its D² from the stretch that it is a part of: none in it is less.</summary>
    public double Least { get; init; } = double.NegativeInfinity;

    /// <summary>Volume and temperature as sums, where those of the stretch that it is a part of will do.</summary>
    public Straight? Straight { get; init; }

    /// <summary>What of it lies within a ratio of a volume, mL; nothing where nothing does.</summary>
    public Stretch? Within(double ml, double ratio)
    {
        var (low, high) = (Math.Max(LowMl, ml / ratio), Math.Min(HighMl, ml * ratio));
        return low >= high ? null : low > LowMl || high < HighMl ? Between(low, high) : this;
    }

    /// <summary>The same between other volumes.</summary>
    public Stretch Between(double lowMl, double highMl) => this with { LowMl = lowMl, HighMl = highMl };

    /// <summary>The same with only those choices of one line for which that holds.</summary>
    public Stretch With(int line, Func<int, bool> holds)
    {
        var (kept, shares) = ((int[][])Kept.Clone(), (double[][])Shares.Clone());
        kept[line] = [.. Kept[line].Where((_, c) => holds(c))];
        shares[line] = [.. Shares[line].Where((_, c) => holds(c))];
        return this with { Kept = kept, Shares = shares };
    }
}

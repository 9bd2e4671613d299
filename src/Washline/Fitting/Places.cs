namespace Washline.Fitting;

/// <summary>Compares candidates by their places in the lines of a grid.</summary>
internal sealed class Places : IEqualityComparer<int[]>
{
    private Places()
    {
    }

    /// <summary>Two candidates are the same where all their places are.</summary>
    public static Places Same { get; } = new();

    public bool Equals(int[]? x, int[]? y) => x.AsSpan().SequenceEqual(y);

    public int GetHashCode(int[] obj)
    {
        var hash = default(HashCode);
        hash.AddBytes(System.Runtime.InteropServices.MemoryMarshal.AsBytes(obj.AsSpan()));
        return hash.ToHashCode();
    }
}

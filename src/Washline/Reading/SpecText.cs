using Washline.Drinks;

namespace Washline.Reading;

/// <summary>A spec as text that <see cref="Draft.Read"/> reads back.</summary>
public static class SpecText
{
    /// <summary>The spec as text.</summary>
    public static string Write(Spec spec) => throw new NotImplementedException();
}

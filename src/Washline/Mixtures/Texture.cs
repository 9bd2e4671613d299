namespace Washline.Mixtures;

/// <summary>What a drink with ice in it is like, in a bartender's words. The limits are ours, by the mass of ice: common practice, no source.</summary>
public enum Texture
{
    /// <summary>Less than a twentieth ice: it pours.</summary>
    Pours,

    /// <summary>A twentieth to under 45 % ice: it pours slowly or is spooned, as from a blender.</summary>
    Slushy,

    /// <summary>45 to under 65 % ice: it is scooped and holds its shape.</summary>
    SoftScoop,

    /// <summary>65 % ice and more: a block.</summary>
    FrozenSolid,
}

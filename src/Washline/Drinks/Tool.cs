namespace Washline.Drinks;

/// <summary>A tool at home: shaker, mixing glass, barspoon, strainer, blender, muddler, swizzle stick, atomiser, peeler.</summary>
/// <param name="Name">The trade's word for it.</param>
public sealed record Tool(string Name);

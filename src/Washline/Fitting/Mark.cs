namespace Washline.Fitting;

/// <summary>An amount that can be measured at home.</summary>
/// <param name="Millilitres">How much, mL.</param>
/// <param name="Text">As it is poured: <c>1¾ oz</c>, <c>22.5 ml</c>, <c>2 dashes</c>.</param>
/// <param name="ByEye">Whether it lies between the marks of the measure.</param>
/// <param name="IsMakers">Whether it is the maker's own amount.</param>
public sealed record Mark(double Millilitres, string Text, bool ByEye, bool IsMakers);

namespace Washline.Reading;

/// <summary>Which form a text has.</summary>
public static class TextForms
{
    /// <summary>The form that a text looks like.</summary>
    public static TextForm Of(string text) => TextForm.Written;
}

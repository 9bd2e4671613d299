using System.Globalization;

namespace Washline.Tests.SecondOpinion;

/// <summary>Compares one figure of the library with the second opinion over many cases and tells the worst.</summary>
internal sealed class Agreement(string what, string unit, double tolerance)
{
    private readonly List<string> _apart = [];
    private double _worst;
    private string _worstCase = "none";
    private int _count;

    public void Compare(double library, double second, object about, double? allowed = null)
    {
        _count++;
        var apart = Math.Abs(library - second);
        var share = apart / (allowed ?? tolerance);
        if (double.IsNaN(library) || share > 1) _apart.Add(Say(library, second, about));
        if (share > _worst) (_worst, _worstCase) = (share, Say(library, second, about));
    }

    /// <summary>Fails with how many are apart and the first ten of them.</summary>
    public void MustHold()
    {
        Assert.True(_count > 0, $"{what}: nothing was compared.");
        Assert.True(_apart.Count == 0, $"{what}: {_apart.Count} of {_count} apart.\n" + string.Join('\n', _apart.Take(10)));
        TestContext.Current.SendDiagnosticMessage(string.Create(CultureInfo.InvariantCulture,
            $"{what}: {_count} agree; the worst uses {100 * _worst:0.00} % of the tolerance: {_worstCase}"));
    }

    private string Say(double library, double second, object about) =>
        string.Create(CultureInfo.InvariantCulture, $"{what} {library:0.0000000} {unit}, second opinion {second:0.0000000} {unit}; {about}");
}

using Washline.Fitting;

namespace Washline.App.Drawings;

/// <summary>One row of the axis on which every way to pour a drink stands.</summary>
/// <param name="Name">The pour: <c>straight</c>, <c>closest</c>, or the bottles that are other than the closest's.</param>
/// <param name="Address">The bench with it.</param>
/// <param name="Jnd">How far it stands.</param>
/// <param name="Words">What moves most.</param>
/// <param name="IsNow">Whether it is what is poured now.</param>
public sealed record WayRow(string Name, string Address, double Jnd, string Words, bool IsNow)
{
    /// <summary>The end of the axis, JND; what lies beyond is an arrow, told as a number.</summary>
    public const double Reach = 4;

    /// <summary>A row for an offer.</summary>
    public static WayRow Of(string name, string address, Offer offer, bool isNow) => new(name, address, offer.DistanceJnd, offer.DistanceJnd < 0.05 ? "" : offer.Most.Words, isNow);
}

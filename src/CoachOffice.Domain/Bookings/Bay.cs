using NodaTime;

namespace CoachOffice.Domain.Bookings;

/// <summary>A bay or room an offering can take.</summary>
/// <param name="Id">Which.</param>
/// <param name="Place">Where it is.</param>
/// <param name="IsInUse">False when it is no longer used: it is then never free, and the place still needs one.</param>
/// <param name="Taken">When it is taken.</param>
public sealed record Bay(ResourceId Id, PlaceId Place, bool IsInUse, IReadOnlyList<Interval> Taken);

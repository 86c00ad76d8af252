using NodaTime;

namespace CoachOffice.Domain.Bookings;

/// <summary>A bay or room an offering can take.</summary>
/// <param name="Place">Where it is.</param>
/// <param name="Taken">When it is taken.</param>
public sealed record Bay(PlaceId Place, IReadOnlyList<Interval> Taken);

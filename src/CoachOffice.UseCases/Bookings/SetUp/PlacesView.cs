using CoachOffice.Domain.Bookings;

namespace CoachOffice.UseCases.Bookings.SetUp;

/// <summary>All places.</summary>
/// <param name="Places">By name, archived ones too.</param>
/// <param name="Ways">Between them.</param>
public sealed record PlacesView(IReadOnlyList<PlaceView> Places, IReadOnlyList<Travel> Ways)
{
    public IEnumerable<PlaceView> InUse => Places.Where(p => p.Place.ArchivedAt is null);

    public IEnumerable<PlaceView> Archived => Places.Where(p => p.Place.ArchivedAt is not null);

    public int Minutes(PlaceId from, PlaceId to) => Ways.FirstOrDefault(w => w.Joins(from, to))?.Minutes ?? 0;
}

using CoachOffice.Domain.Bookings;

namespace CoachOffice.UseCases.Bookings.SetUp;

/// <summary>A place as the set-up shows it.</summary>
/// <param name="Place">The place.</param>
/// <param name="Bays">Its bays and rooms by name, archived ones too.</param>
public sealed record PlaceView(Place Place, IReadOnlyList<Resource> Bays)
{
    public IEnumerable<Resource> InUse => Bays.Where(b => b.ArchivedAt is null);
}

using CoachOffice.Domain.Bookings;

namespace CoachOffice.UseCases.Bookings.SetUp;

/// <summary>A place as entered.</summary>
public sealed record PlaceForm
{
    /// <summary>Null: a new one.</summary>
    public PlaceId? Id { get; init; }

    public int Version { get; init; }

    public string Name { get; init; } = "";

    public string Address { get; init; } = "";
}

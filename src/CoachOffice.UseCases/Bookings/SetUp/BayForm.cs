using CoachOffice.Domain.Bookings;

namespace CoachOffice.UseCases.Bookings.SetUp;

/// <summary>A bay or room as entered.</summary>
public sealed record BayForm
{
    /// <summary>Null: a new one.</summary>
    public ResourceId? Id { get; init; }

    public int Version { get; init; }

    public required PlaceId PlaceId { get; init; }

    public string Name { get; init; } = "";
}

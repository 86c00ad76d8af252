using CoachOffice.Domain.Bookings;

namespace CoachOffice.UseCases.Bookings.SetUp;

/// <summary>An offering as entered.</summary>
public sealed record OfferingForm
{
    /// <summary>Null: a new one.</summary>
    public OfferingId? Id { get; init; }

    public int Version { get; init; }

    public required OfferingDetails Details { get; init; }
}

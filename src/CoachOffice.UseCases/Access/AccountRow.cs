using CoachOffice.Domain.Access;
using NodaTime;

namespace CoachOffice.UseCases.Access;

/// <summary>An account as listed to owners.</summary>
public sealed record AccountRow
{
    public required AccountId Id { get; init; }

    public required string DisplayName { get; init; }

    public required string Email { get; init; }

    public required Policy Policy { get; init; }

    public required bool HasSecondFactor { get; init; }

    public required Instant AddedAt { get; init; }

    public required Instant? DisabledAt { get; init; }
}

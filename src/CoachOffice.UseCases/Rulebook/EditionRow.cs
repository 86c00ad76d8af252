using CoachOffice.Domain.Plans;
using NodaTime;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>An edition in a list.</summary>
public sealed record EditionRow
{
    public required int Number { get; init; }

    public required string Sha256 { get; init; }

    public required EditionKind Kind { get; init; }

    public required Instant AdoptedAt { get; init; }

    public required string By { get; init; }

    public required string Why { get; init; }

    /// <summary>What differs from the edition before.</summary>
    public required IReadOnlyList<EntryChange> Changes { get; init; }

    public required bool IsInForce { get; init; }
}

using NodaTime;
using Book = CoachOffice.Domain.Plans.Rulebook;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>A rulebook for reading.</summary>
public sealed record RulebookView
{
    public required Book Book { get; init; }

    public required string Sha256 { get; init; }

    /// <summary>Number of the edition in force, which a change begins with.</summary>
    public required int Edition { get; init; }

    public required bool IsInForce { get; init; }

    /// <summary>When the book in force was adopted, and by whom.</summary>
    public required Instant AdoptedAt { get; init; }

    public required string AdoptedBy { get; init; }

    /// <summary>Every edition this practice has had, newest first.</summary>
    public required IReadOnlyList<EditionRow> Editions { get; init; }
}

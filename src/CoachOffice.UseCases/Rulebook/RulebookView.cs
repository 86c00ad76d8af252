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

    /// <summary>How many entries the reader changed and has not put into force.</summary>
    public required int Waiting { get; init; }

    /// <summary>True when the reader may change rules.</summary>
    public required bool MayChange { get; init; }
}

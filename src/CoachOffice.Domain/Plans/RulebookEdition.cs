using CoachOffice.Domain.Access;
using NodaTime;

namespace CoachOffice.Domain.Plans;

/// <summary>One adoption of a rulebook: the shipped book, the practice's own changes on top of it, and who took it into force, when and why. Insert-only.</summary>
public sealed record RulebookEdition
{
    /// <summary>From 1, without a gap; the key.</summary>
    public required int Number { get; init; }

    /// <summary>Hash of the resulting book's meaning, lower hex. Two editions may share it.</summary>
    public required string Sha256 { get; init; }

    /// <summary>The shipped book below it, by the hash of its text.</summary>
    public required string ShippedSha256 { get; init; }

    /// <summary>The practice's own changes as YAML in their canonical form; empty for none.</summary>
    public required string Own { get; init; }

    public required EditionKind Kind { get; init; }

    public required Instant AdoptedAt { get; init; }

    /// <summary>The account; null for the program.</summary>
    public required AccountId? By { get; init; }

    public required string ByName { get; init; }

    /// <summary>The person's reason; empty when none was given.</summary>
    public required string Why { get; init; }

    /// <summary>What differs from the edition in force before; empty for the first.</summary>
    public required IReadOnlyList<EntryChange> Changes { get; init; }
}

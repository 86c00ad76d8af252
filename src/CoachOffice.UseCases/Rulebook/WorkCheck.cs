using CoachOffice.Domain.Plans;
using Book = CoachOffice.Domain.Plans.Rulebook;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>What came of trying the gathered changes together on the edition in force.</summary>
public sealed record WorkCheck
{
    /// <summary>Faults of the reader, else worked cases that come out otherwise; empty when they can be put into force.</summary>
    public required IReadOnlyList<EntryFault> Faults { get; init; }

    /// <summary>What to look at although it serves.</summary>
    public required IReadOnlyList<EntryFault> Warnings { get; init; }

    /// <summary>What the entries make of each other: while an entry is typed only what reasoning finds, on the page of all changes also what generated students never hear; empty while there are faults.</summary>
    public required IReadOnlyList<WorkAnomaly> Anomalies { get; init; }

    /// <summary>The book as it would be; null while there are faults.</summary>
    public Book? Book { get; init; }

    /// <summary>What would differ from the edition in force; empty while there are faults.</summary>
    public required IReadOnlyList<EntryChange> Changes { get; init; }

    /// <summary>The faults that stand in one entry.</summary>
    public IEnumerable<EntryFault> In(EntryId entry) => Faults.Where(f => f.Entry == entry);
}

using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading;
using Book = CoachOffice.Domain.Plans.Rulebook;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>An edition that came, or on trial would come, into force.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Sha256">Hash of its book.</param>
/// <param name="Changes">What differs from the edition before.</param>
/// <param name="Warnings">What to look at although it serves.</param>
public sealed record AdoptedEdition(int Number, string Sha256, IReadOnlyList<EntryChange> Changes, IReadOnlyList<Fault> Warnings)
{
    /// <summary>The same differences with their texts; filled only when it was tried and not adopted.</summary>
    public IReadOnlyList<EntryDifference> Differences { get; init; } = [];

    /// <summary>The book as it would be; null when it was adopted.</summary>
    public Book? Book { get; init; }
}

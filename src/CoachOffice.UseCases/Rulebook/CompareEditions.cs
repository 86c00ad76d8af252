using CoachOffice.Domain;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Writing;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>What two editions of the rulebook say differently, entry by entry and line by line.</summary>
public sealed class CompareEditions(StandingBooks books)
{
    /// <summary>Sorted by entry; empty when they say the same; a refusal when one of them never was.</summary>
    public async Task<Outcome<IReadOnlyList<EntryDifference>>> Between(int first, int second, CancellationToken stop = default)
    {
        if (await books.Numbered(first, stop) is not { } from) return NotFound(first);
        if (await books.Numbered(second, stop) is not { } to) return NotFound(second);
        return Outcome<IReadOnlyList<EntryDifference>>.Of(BookChanges.InWords(from, to));
    }

    private static Refusal NotFound(int number) => new("edition-not-found", $"There is no edition {number} of the rulebook.");
}

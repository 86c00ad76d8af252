using CoachOffice.Domain;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Writing;
using DiffPlex.DiffBuilder;
using DiffPlex.DiffBuilder.Model;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>What two editions of the rulebook say differently, entry by entry and line by line.</summary>
public sealed class CompareEditions(StandingBooks books)
{
    /// <summary>Sorted by entry; empty when they say the same; a refusal when one of them never was.</summary>
    public async Task<Outcome<IReadOnlyList<EntryDifference>>> Between(int first, int second, CancellationToken stop = default)
    {
        if (await books.Numbered(first, stop) is not { } from) return NotFound(first);
        if (await books.Numbered(second, stop) is not { } to) return NotFound(second);
        var (old, now) = (BookEntries.Of(from), BookEntries.Of(to));
        return Outcome<IReadOnlyList<EntryDifference>>.Of([.. BookChanges.Between(from, to).Select(change => Of(change, old.GetValueOrDefault(change.Id), now.GetValueOrDefault(change.Id)))]);
    }

    private static EntryDifference Of(EntryChange change, string? old, string? now)
    {
        var lines = InlineDiffBuilder.Diff((old ?? "").TrimEnd('\n'), (now ?? "").TrimEnd('\n'), ignoreWhiteSpace: false).Lines;
        return new EntryDifference(change, old, now, [.. lines.Where(l => l.Text.Length > 0).Select(l => new TextLine(Kind(l.Type), l.Text))]);
    }

    private static LineKind Kind(ChangeType type) => type switch
    {
        ChangeType.Deleted => LineKind.Gone,
        ChangeType.Inserted => LineKind.Come,
        _ => LineKind.Same,
    };

    private static Refusal NotFound(int number) => new("edition-not-found", $"There is no edition {number} of the rulebook.");
}

using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading;
using CoachOffice.Drafting.Writing;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>What differs between two books, entry by entry.</summary>
public static class BookChanges
{
    /// <summary>Sorted by entry; empty when they say the same.</summary>
    public static IReadOnlyList<EntryChange> Between(LoadedRulebook from, LoadedRulebook to)
    {
        var (old, now) = (BookEntries.Of(from), BookEntries.Of(to));
        return [.. old.Keys.Union(now.Keys).Order().Select(id => Of(id, old.GetValueOrDefault(id), now.GetValueOrDefault(id))).OfType<EntryChange>()];
    }

    /// <summary>The same with the old and the new text of each entry.</summary>
    public static IReadOnlyList<EntryDifference> InWords(LoadedRulebook from, LoadedRulebook to)
    {
        var (old, now) = (BookEntries.Of(from), BookEntries.Of(to));
        return [.. Between(from, to).Select(change => Of(change, old.GetValueOrDefault(change.Id), now.GetValueOrDefault(change.Id)))];
    }

    private static EntryDifference Of(EntryChange change, string? old, string? now) => new(change, old, now, EntryLines.Between(old, now));

    private static EntryChange? Of(EntryId id, string? old, string? now)
    {
        if (string.Equals(old, now, StringComparison.Ordinal)) return null;
        return new EntryChange(id, old is null ? ChangeKind.Added : now is null ? ChangeKind.Removed : ChangeKind.Changed);
    }
}

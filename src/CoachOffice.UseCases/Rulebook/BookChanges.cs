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

    private static EntryChange? Of(EntryId id, string? old, string? now)
    {
        if (string.Equals(old, now, StringComparison.Ordinal)) return null;
        return new EntryChange(id, old is null ? ChangeKind.Added : now is null ? ChangeKind.Removed : ChangeKind.Changed);
    }
}

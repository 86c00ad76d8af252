using CoachOffice.Domain.Access;
using NodaTime;

namespace CoachOffice.Domain.Plans;

/// <summary>What one account changed in the rulebook and has not put into force yet: whole entries, gathered until they fit together. One row for each account, without edits when all is done or dropped.</summary>
public sealed class RulebookWork
{
    private RulebookWork()
    {
    }

    /// <summary>Whose; the key.</summary>
    public AccountId Account { get; private set; }

    /// <summary>Number of the edition the changes began with.</summary>
    public int Edition { get; private set; }

    /// <summary>The changes, each entry once, by entry.</summary>
    public IReadOnlyList<EntryEdit> Edits { get; private set; } = [];

    /// <summary>What the last drop took away, so that it can be taken back.</summary>
    public IReadOnlyList<EntryEdit> Dropped { get; private set; } = [];

    public Instant ChangedAt { get; private set; }

    /// <summary>Concurrency token, raised at each save.</summary>
    public int Version { get; private set; }

    /// <summary>Nothing changed yet.</summary>
    public static RulebookWork Of(AccountId account) => new() { Account = account };

    /// <summary>Gathers changes; one of the same entry takes the place of the earlier one.</summary>
    /// <param name="edits">The changes.</param>
    /// <param name="edition">The edition their forms were opened with; it counts when nothing was gathered before.</param>
    /// <param name="now">When.</param>
    public void Keep(IReadOnlyList<EntryEdit> edits, int edition, Instant now)
    {
        ArgumentNullException.ThrowIfNull(edits);
        if (Edits.Count == 0) Edition = edition;
        Edits = [.. Edits.Where(old => edits.All(e => e.Id != old.Id)).Concat(edits).OrderBy(e => e.Id)];
        (Dropped, ChangedAt) = ([], now);
    }

    /// <summary>Drops the changes of some entries.</summary>
    public void Drop(IReadOnlyCollection<EntryId> entries, Instant now)
    {
        Dropped = [.. Edits.Where(e => entries.Contains(e.Id))];
        Edits = [.. Edits.Where(e => !entries.Contains(e.Id))];
        ChangedAt = now;
    }

    /// <summary>Takes the last drop back.</summary>
    public void TakeBack(Instant now)
    {
        if (Dropped.Count > 0) Keep(Dropped, Edition, now);
    }

    /// <summary>Lays the changes over a later edition.</summary>
    public void LayOver(int edition, Instant now) => (Edition, ChangedAt) = (edition, now);

    /// <summary>They are in force now.</summary>
    public void Finish(Instant now) => (Edits, Dropped, ChangedAt) = ([], [], now);
}

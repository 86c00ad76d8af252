using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading;
using CoachOffice.Drafting.Writing;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>The account's gathered changes of the rulebook, old beside new, and how they fit together.</summary>
public sealed class ReadWork(OfficeDb db, StandingBooks books, StandingAnomalies before)
{
    /// <summary>Also without any change; refused only to who may not change rules.</summary>
    public async Task<Outcome<WorkView>> Of(Actor actor, CancellationToken stop = default)
    {
        if (EditChecks.Right(actor) is { } against) return against;
        var work = await db.WorkSeen(actor, stop);
        var standing = await books.MustStand(stop);
        var edition = work.Edits.Count == 0 ? standing.Edition.Number : work.Edition;
        var later = (await ListEditions.Of(db, standing.Edition.Number, stop)).Where(e => e.Number > edition).Reverse().ToList();
        var changed = later.SelectMany(e => e.Changes).Select(c => c.Id).ToHashSet();
        var (old, shipped) = (BookEntries.Of(standing.Loaded), Shipped(work, standing));
        return new WorkView
        {
            Edition = edition,
            Rows = [.. work.Edits.Select(e => new WorkRow(e, old.GetValueOrDefault(e.Id), New(e, shipped), changed.Contains(e.Id)))],
            Later = later,
            Book = standing.Loaded.Book,
            CanTakeBack = work.Dropped.Count > 0,
            Check = work.Edits.Count == 0 ? new WorkCheck { Faults = [], Warnings = [], Anomalies = [], Changes = [] } : Whole(standing, work.Edits),
        };
    }

    // Here nobody waits for each key, so the many generated students are asked as well.
    private WorkCheck Whole(StandingBook standing, IReadOnlyList<EntryEdit> edits)
    {
        var tried = EditProposal.Of(books.Trial, standing, edits);
        var check = WorkTrial.Check(standing, edits, tried, before);
        return tried.Compiled is { } book ? check with { Anomalies = [.. check.Anomalies, .. before.Unheard(standing, book)] } : check;
    }

    private static string? New(EntryEdit edit, IReadOnlyDictionary<EntryId, string> shipped) =>
        edit.Deed == EntryDeed.BackToShipped ? shipped.GetValueOrDefault(edit.Id) : edit.Text;

    private static IReadOnlyDictionary<EntryId, string> Shipped(RulebookWork work, StandingBook standing) =>
        work.Edits.Any(e => e.Deed == EntryDeed.BackToShipped) ? BookEntries.Of(RulebookReader.Load(standing.Bases[^1].Files).Value) : new Dictionary<EntryId, string>();
}

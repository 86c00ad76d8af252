using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Writing;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>Gathers changes of rulebook entries in the account's working copy. Nothing is in force by it.</summary>
public sealed class KeepChange(OfficeDb db, StandingBooks books, AuditTrail trail, IClock clock, StandingAnomalies before)
{
    /// <summary>Kept, or not because an entry has faults of its own; a refusal for what is no change at all. A change that says what is in force already leaves the working copy.</summary>
    public async Task<Outcome<KeptChange>> Of(WorkForm form, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(form);
        if (EditChecks.Right(actor) is { } against) return against;
        var standing = await books.MustStand(stop);
        var work = await db.Work(actor, stop);
        var wrong = EditChecks.Edits(form.Edits).ToList();
        if (wrong.Count > 0) return Outcome<KeptChange>.Refused(wrong);
        var merged = Merged(work, form.Edits);
        var tried = EditProposal.Of(books.Trial, standing, merged);
        var edits = form.Edits.Select(e => InOneForm(e, tried)).ToList();
        if (form.IsNew && Taken(edits, standing, work).ToList() is { Count: > 0 } taken) return Outcome<KeptChange>.Refused(taken);
        var check = WorkTrial.Check(standing, merged, tried, before);
        if (!form.Unfinished && edits.Any(e => check.In(e.Id).Any())) return new KeptChange(false, true, check, work.Edits.Count);
        var idle = edits.Where(e => SaysNothing(e, standing)).Select(e => e.Id).ToHashSet();
        work.Keep([.. edits.Where(e => !idle.Contains(e.Id))], form.Edition, clock.GetCurrentInstant());
        if (idle.Count > 0) work.Drop(idle, clock.GetCurrentInstant());
        trail.Add(actor, "rulebook-change-kept", AuditSubject.Of(actor.Account!.Value), $"entries:{edits.Count} waiting:{work.Edits.Count}");
        return await db.TrySave(stop) == Saved.Yes ? new KeptChange(true, idle.Count < edits.Count, check, work.Edits.Count) : RulebookWorks.Busy;
    }

    // The same form sent twice is one new entry.
    private static IEnumerable<Refusal> Taken(IReadOnlyList<EntryEdit> edits, StandingBook standing, RulebookWork work) =>
        edits.Where(e => work.Edits.All(w => w != e) && (BookEntries.Find(standing.Loaded, e.Id) is not null || work.Edits.Any(w => w.Id == e.Id && w.Deed == EntryDeed.Write)))
            .Select(e => new Refusal("entry-there", $"There is a {e.Id} already. Change that one, or give yours another name."));

    private static IReadOnlyList<EntryEdit> Merged(RulebookWork work, IReadOnlyList<EntryEdit> edits) =>
        [.. work.Edits.Where(old => edits.All(e => e.Id != old.Id)), .. edits];

    // What was read without a fault is kept as it will be written; anything else as it was typed.
    private static EntryEdit InOneForm(EntryEdit edit, TriedBook tried) =>
        edit.Deed == EntryDeed.Write && tried.Loaded is { } loaded && BookEntries.Find(loaded, edit.Id) is { } text ? edit with { Text = text } : edit;

    private static bool SaysNothing(EntryEdit edit, StandingBook standing) => edit.Deed switch
    {
        EntryDeed.Write => BookEntries.Find(standing.Loaded, edit.Id) == edit.Text,
        EntryDeed.Remove => BookEntries.Find(standing.Loaded, edit.Id) is null,
        _ => standing.Loaded.Own.Written.Concat(standing.Loaded.Own.Removed).All(e => e.Id != edit.Id),
    };
}

using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons.Imports;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Lessons.Imports;

/// <summary>Says what a file's columns hold: for this file, and for the next one with the same columns.</summary>
public sealed class SayColumns(OfficeDb db, DeviceFileDoor door, DeviceFileStore store, AuditTrail trail)
{
    /// <summary>The file, ready to be looked at; or everything that is still open.</summary>
    public async Task<Outcome<DeviceFile>> Of(StudentId student, Guid id, ColumnsForm form, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(form);
        ArgumentNullException.ThrowIfNull(actor);
        var found = await door.FindOpen(student, id, actor, stop);
        if (!found.TryGet(out var file)) return found;
        var facts = FileFacts.Of(store.PathOf(id), SheetKind.Swings).Value;
        var said = new ColumnsCheck(facts, await door.Book(stop), await door.Today(stop)).Of(form);
        if (!said.TryGet(out var answers)) return Outcome<DeviceFile>.Refused(said.Refusals);
        file.Say(answers);
        var kept = await db.RememberedColumns.SingleOrDefaultAsync(c => c.HeaderSha256 == facts.Layout.HeaderSha256, stop);
        if (kept is null) db.RememberedColumns.Add(kept = RememberedColumns.Of(facts.Layout.HeaderSha256));
        kept.Say(answers.Mapping, file.Account, door.Now);
        trail.Add(actor, "device-columns-said", AuditSubject.Of(student), $"columns:{answers.Mapping.Columns.Count}");
        return await db.TrySave(stop) == Saved.Yes ? file : new Refusal(Clash.Code, "Somebody else said it of the same columns at this moment. Send it again.");
    }
}

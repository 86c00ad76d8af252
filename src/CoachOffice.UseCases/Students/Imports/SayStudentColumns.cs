using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Students.Imports;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Students.Imports;

/// <summary>Says what a list's columns hold: for this list, and for the next one with the same columns.</summary>
public sealed class SayStudentColumns(OfficeDb db, StudentFileDoor door, AuditTrail trail)
{
    /// <summary>The list, ready to be looked at; or everything that is still open.</summary>
    public async Task<Outcome<StudentFile>> Of(Guid id, StudentColumnsForm form, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(form);
        ArgumentNullException.ThrowIfNull(actor);
        var found = await door.FindOpen(id, actor, stop);
        if (!found.TryGet(out var file)) return found;
        var facts = door.Look(id).Value;
        var said = new StudentColumnsCheck(facts).Of(form);
        if (!said.TryGet(out var columns)) return Outcome<StudentFile>.Refused(said.Refusals);
        file.Say(columns);
        var kept = await db.RememberedStudentColumns.SingleOrDefaultAsync(c => c.HeaderSha256 == facts.Layout.HeaderSha256, stop);
        if (kept is null) db.RememberedStudentColumns.Add(kept = RememberedStudentColumns.Of(facts.Layout.HeaderSha256));
        kept.Say(columns, file.Account, door.Now);
        trail.Add(actor, "student-columns-said", AuditSubject.StudentFile(id), $"columns:{columns.Columns.Count}");
        return await db.TrySave(stop) == Saved.Yes ? file : new Refusal(Clash.Code, "Somebody else said it of the same columns at this moment. Send it again.");
    }
}

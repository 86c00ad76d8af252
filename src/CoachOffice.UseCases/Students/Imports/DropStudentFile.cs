using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.UseCases.Access;

namespace CoachOffice.UseCases.Students.Imports;

/// <summary>Drops an open list: nobody of it is brought in, and its text is deleted.</summary>
public sealed class DropStudentFile(OfficeDb db, StudentFileDoor door, StudentFileStore store, AuditTrail trail)
{
    /// <summary>True, or why not.</summary>
    public async Task<Outcome<bool>> Of(Guid id, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        var found = await door.Find(id, actor, stop);
        if (!found.TryGet(out var file)) return Outcome<bool>.Refused(found.Refusals);
        if (!file.IsOpen) return new Refusal("file-in-use", "This list is brought in already. Undo that instead.");
        db.StudentFiles.Remove(file);
        trail.Add(actor, "student-list-dropped", AuditSubject.StudentFile(id));
        if (await db.TrySave(stop) != Saved.Yes) return new Refusal(Clash.Code, "The list was changed at this moment; look again.");
        store.Remove(id);
        return true;
    }
}

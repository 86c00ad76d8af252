using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;

namespace CoachOffice.UseCases.Lessons.Imports;

/// <summary>Drops an open file: nothing of it is imported, and its text is deleted.</summary>
public sealed class DropDeviceFile(OfficeDb db, DeviceFileDoor door, DeviceFileStore store, ImportRuns runs, AuditTrail trail)
{
    /// <summary>True, or why not.</summary>
    public async Task<Outcome<bool>> Of(StudentId student, Guid id, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        var found = await door.Find(student, id, actor, stop);
        if (!found.TryGet(out var file)) return Outcome<bool>.Refused(found.Refusals);
        if (!file.IsOpen || runs.Of(id) is { IsRunning: true }) return new Refusal("file-in-use", "This file is imported, or is being imported: stop that first.");
        db.DeviceFiles.Remove(file);
        trail.Add(actor, "device-file-dropped", AuditSubject.Of(student));
        if (await db.TrySave(stop) != Saved.Yes) return new Refusal(Clash.Code, "The file was changed at this moment; look again.");
        store.Remove(id);
        return true;
    }
}

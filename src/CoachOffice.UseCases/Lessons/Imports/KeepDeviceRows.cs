using CoachOffice.Data;
using CoachOffice.Data.Bulk;
using CoachOffice.Domain;
using CoachOffice.Domain.Lessons.Imports;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;

namespace CoachOffice.UseCases.Lessons.Imports;

/// <summary>
/// Keeps a file's swings as lessons, all in one transaction: a stop, a defect or a power cut leaves nothing half, and nobody sees a lesson before all of it is there.
/// One transaction and not a staging table: it writes every row once, and at the most rows a file may have it holds up other saves for seconds only.
/// </summary>
public sealed class KeepDeviceRows(OfficeDb db, DeviceFileDoor door, LessonsOfFile lessons, IManyRows many, AuditTrail trail)
{
    internal async Task<Outcome<Guid>> Of(ImportOrder order, ImportRun run, CancellationToken stop)
    {
        await using var transaction = await db.Database.BeginTransactionAsync(stop);
        var (found, whose) = (await door.FindOpen(order.Student, order.File, order.Actor, stop), await door.Whose(order.Student, stop));
        if (!found.TryGet(out var file)) return Outcome<Guid>.Refused(found.Refusals);
        if (!whose.TryGet(out var student)) return Outcome<Guid>.Refused(whose.Refusals);
        var reading = await door.Read(file, student, stop);
        run.Reads(reading);
        var batch = new SwingBatch(order, lessons, many, door.Now, await lessons.Picked(order, stop));
        var tally = await batch.Keep(reading, run, stop);
        if (tally.Swings == 0) return new Refusal("nothing-kept", "Not one row of the file could be kept; the list says why.");
        await lessons.End(batch.Lessons, student, await door.Book(stop), stop);
        return await Close(file, tally, batch, order, transaction, stop);
    }

    private async Task<Outcome<Guid>> Close(DeviceFile file, FileTally tally, SwingBatch batch, ImportOrder order, Microsoft.EntityFrameworkCore.Storage.IDbContextTransaction transaction, CancellationToken stop)
    {
        file.Close(tally.Outcome([.. batch.Lessons.Select(l => new KeptLesson(l.Lesson.Id.Value, l.Group.Day, l.Group.Club, l.Group.Swings, l.IsNew))]), door.Now);
        foreach (var lesson in batch.Lessons) trail.Add(order.Actor, "readings-imported", AuditSubject.Of(lesson.Lesson.Id), $"swings:{lesson.Group.Swings}");
        trail.Add(order.Actor, "device-file-imported", AuditSubject.Of(order.Student), $"swings:{tally.Swings} lessons:{batch.Lessons.Count} refused:{tally.RefusedRows}");
        if (await db.TrySave(stop) != Saved.Yes) return new Refusal("file-known", "The same file was imported for this student at this moment by someone else. Nothing was kept twice.");
        await transaction.CommitAsync(stop);

        // A file cannot take part in a transaction: it goes last, and the sweep finds it if we don't get there.
        door.Forget(file);
        return file.Id;
    }
}

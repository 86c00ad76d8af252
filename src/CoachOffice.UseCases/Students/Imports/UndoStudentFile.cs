using CoachOffice.Data;
using CoachOffice.Data.Students;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Students;
using CoachOffice.Domain.Students.Imports;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Students.Imports;

/// <summary>Takes a list that was brought in back as a whole: students it added go, fields it filled are empty again. Whoever has had a lesson, a booking, an entry or a change since stays, and is named.</summary>
public sealed class UndoStudentFile(OfficeDb db, StudentFileDoor door, StudentFileStore store, AuditTrail trail)
{
    private const string Added = """SELECT "StudentId" FROM "BroughtStudents" WHERE "FileId" = {0} AND "IsNew" """;

    // The list itself, and membership in a group, are no history of a student.
    private static readonly string[] NoHistory = ["BroughtStudents", "GroupMembers"];

    /// <summary>What it came to, or why not.</summary>
    public async Task<Outcome<UndoneList>> Of(Guid id, Actor actor, CancellationToken stop = default)
    {
        var found = await door.Find(id, actor, stop);
        if (!found.TryGet(out var file)) return Outcome<UndoneList>.Refused(found.Refusals);
        if (file.IsOpen || file.UndoneAt is not null) return new Refusal("nothing-to-undo", "This list is not brought in, or was taken back already.");
        await using var transaction = await db.Database.BeginTransactionAsync(stop);
        var emptied = await Empty(id, stop);
        file.Undo(door.Now);
        if (await db.TrySave(stop) != Saved.Yes) return new Refusal(Clash.Code, "Somebody else saved one of these students at the same moment. Look again.");
        var removed = await Remove(id, stop);
        await db.BroughtStudents.Where(b => b.FileId == id && !b.IsNew && emptied.Contains(b.StudentId)).ExecuteDeleteAsync(stop);
        var stayed = await db.BroughtStudents.CountAsync(b => b.FileId == id, stop);
        trail.Add(actor, "students-taken-back", AuditSubject.StudentFile(id), $"removed:{removed} emptied:{emptied.Count} stayed:{stayed}");
        await db.SaveChangesAsync(stop);
        await transaction.CommitAsync(stop);
        store.Remove(id);
        return new UndoneList(removed, emptied.Count, stayed);
    }

    private async Task<List<StudentId>> Empty(Guid file, CancellationToken stop)
    {
        var filled = await db.BroughtStudents.AsNoTracking().Where(b => b.FileId == file && !b.IsNew)
            .Join(db.Students.Where(s => s.ErasedAt == null), b => b.StudentId, s => s.Id, (b, s) => new { Brought = b, Student = s })
            .Where(x => x.Student.Version == x.Brought.StudentVersion).AsTracking().ToListAsync(stop);
        foreach (var row in filled) row.Student.Change(StudentFilling.Empty(row.Student.Details(), row.Brought.Filled));
        return [.. filled.Select(r => r.Student.Id)];
    }

    private async Task<int> Remove(Guid file, CancellationToken stop)
    {
        var busy = (await StudentTies.Named(db, Added, file, NoHistory, stop)).Select(StudentId.From).ToHashSet();
        var elsewhere = db.BroughtStudents.Where(b => b.FileId != file);
        var untouched = await db.BroughtStudents.Where(b => b.FileId == file && b.IsNew && !elsewhere.Any(e => e.StudentId == b.StudentId))
            .Join(db.Students, b => b.StudentId, s => s.Id, (b, s) => new { s.Id, s.Version, Then = b.StudentVersion })
            .Where(s => s.Version == s.Then).Select(s => s.Id).ToListAsync(stop);
        var going = untouched.Where(s => !busy.Contains(s)).ToList();
        foreach (var some in going.Chunk(500))
        {
            await db.BroughtStudents.Where(b => some.Contains(b.StudentId)).ExecuteDeleteAsync(stop);
            await db.GroupMembers.Where(m => some.Contains(m.StudentId)).ExecuteDeleteAsync(stop);
            await db.Students.Where(s => some.Contains(s.Id)).ExecuteDeleteAsync(stop);
        }

        return going.Count;
    }
}

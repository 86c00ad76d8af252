using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Students.Imports;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Students.Imports;

/// <summary>Brings a list's students in, all in one transaction: a defect or a power cut leaves nothing half. A list of the largest size takes seconds, so the page waits for it.</summary>
public sealed class BringStudents(OfficeDb db, StudentFileDoor door, KeepBroughtStudents keep, StudentFileStore store, AuditTrail trail)
{
    /// <summary>The list; sent twice it is brought in once.</summary>
    public async Task<Outcome<Guid>> Of(Guid id, Actor actor, CancellationToken stop = default)
    {
        var found = await door.Find(id, actor, stop);
        if (!found.TryGet(out var file)) return Outcome<Guid>.Refused(found.Refusals);
        if (!file.IsOpen) return id;
        if (!store.Has(id)) return StudentFileDoor.NotFound;
        if (file.Columns is null) return new Refusal("columns-unsaid", "Say first what the columns hold.");
        var sha = HashOf(file);
        if (await db.StudentFiles.AsNoTracking().SingleOrDefaultAsync(f => f.BroughtSha256 == sha, stop) is { } known) return await door.Known(known, stop);
        await using var transaction = await db.Database.BeginTransactionAsync(stop);

        // Whoever sends it at the same moment waits here, and then finds it brought in.
        if (await db.StudentFiles.Where(f => f.Id == id && f.BroughtAt == null).ExecuteUpdateAsync(f => f.SetProperty(x => x.Name, x => x.Name), stop) == 0) return id;
        var rows = await door.Judge(file, stop);
        var outcome = PreviewStudentFile.CountOf(rows);
        if (outcome.Added + outcome.Filled == 0) return new Refusal("nothing-to-bring", "There is nobody to bring in: every row is there already or refused. The list says why.");
        file.Close(outcome, sha, door.Now);
        trail.Add(actor, "students-brought", AuditSubject.StudentFile(id), $"added:{outcome.Added} filled:{outcome.Filled} known:{outcome.Known} refused:{outcome.Refused}");
        if (await keep.Of(id, rows, stop) != Saved.Yes) return new Refusal(Clash.Code, "Somebody else saved one of these students, or brought this list in, at the same moment. Look again.");
        await transaction.CommitAsync(stop);

        // A file cannot take part in a transaction: it goes last. With refused rows it lies a day longer, so that they can be fetched and mended.
        if (outcome.Refused == 0) store.Remove(id);
        return id;
    }

    private static string HashOf(StudentFile file) =>
        Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes($"{file.Sha256}|{JsonSerializer.Serialize(file.Columns)}")));
}

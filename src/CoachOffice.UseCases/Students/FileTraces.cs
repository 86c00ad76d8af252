using CoachOffice.Data;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Lessons.Imports;
using CoachOffice.UseCases.Students.Imports;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Students;

/// <summary>What files that were brought may still say about a student.</summary>
public sealed class FileTraces(OfficeDb db, DeviceFileStore devices, StudentFileStore lists)
{
    /// <summary>Empties it in the caller's transaction and gives the texts that are to be deleted after it.</summary>
    internal async Task<IReadOnlyList<string>> Remove(StudentId id, CancellationToken stop) => [.. await FromDevices(id, stop), .. await FromLists(id, stop)];

    // A file's name may name the person, and its refused rows quote it; the readings stay.
    private async Task<IReadOnlyList<string>> FromDevices(StudentId id, CancellationToken stop)
    {
        var theirs = await db.DeviceFiles.Where(f => f.StudentId == id).Select(f => f.Id).ToListAsync(stop);
        await db.DeviceFiles.Where(f => f.StudentId == id).ExecuteDeleteAsync(stop);
        return [.. theirs.Select(devices.PathOf)];
    }

    // All texts of lists that lie there: no program can tell whether a person stands in a list under another spelling. They lie for a day at most, and whoever had one open brings it again.
    private async Task<IReadOnlyList<string>> FromLists(StudentId id, CancellationToken stop)
    {
        await db.StudentFiles.Where(f => db.BroughtStudents.Any(b => b.FileId == f.Id && b.StudentId == id))
            .ExecuteUpdateAsync(f => f.SetProperty(x => x.Name, "").SetProperty(x => x.Sha256, "").SetProperty(x => x.BroughtSha256, (string?)null), stop);
        await db.BroughtStudents.Where(b => b.StudentId == id).ExecuteDeleteAsync(stop);
        await db.StudentFiles.Where(f => f.BroughtAt == null).ExecuteDeleteAsync(stop);
        return [.. lists.All().Select(lists.PathOf)];
    }
}

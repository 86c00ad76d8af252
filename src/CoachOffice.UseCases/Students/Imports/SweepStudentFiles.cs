using CoachOffice.Data;
using CoachOffice.Domain.Students.Imports;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Students.Imports;

/// <summary>Deletes lists nobody brought in or dropped within a day, and texts a day after they were brought.</summary>
public sealed class SweepStudentFiles(OfficeDb db, StudentFileStore store, IClock clock)
{
    /// <summary>One sweep; gives how many texts were deleted.</summary>
    public async Task<int> Once(CancellationToken stop)
    {
        var lying = store.All();
        if (lying.Count == 0) return 0;
        var since = clock.GetCurrentInstant() - StudentFile.LiesFor;
        await db.StudentFiles.Where(f => f.BroughtAt == null && f.OpenedAt < since).ExecuteDeleteAsync(stop);
        var open = await db.StudentFiles.Where(f => f.BroughtAt == null && lying.Contains(f.Id)).Select(f => f.Id).ToListAsync(stop);
        var gone = lying.Except(open).Where(id => store.IsOlder(id, since)).ToList();
        foreach (var id in gone) store.Remove(id);
        return gone.Count;
    }
}

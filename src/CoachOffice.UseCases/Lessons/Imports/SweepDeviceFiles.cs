using CoachOffice.Data;
using CoachOffice.Domain.Lessons.Imports;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Lessons.Imports;

/// <summary>Deletes files nobody imported or dropped within a day, and texts whose file is gone.</summary>
public sealed class SweepDeviceFiles(OfficeDb db, DeviceFileStore store, IClock clock)
{
    /// <summary>One sweep; gives how many were deleted.</summary>
    public async Task<int> Once(CancellationToken stop)
    {
        var lying = store.All();
        if (lying.Count == 0) return 0;
        var since = clock.GetCurrentInstant() - DeviceFile.OpenFor;
        await db.DeviceFiles.Where(f => f.ImportedAt == null && f.OpenedAt < since).ExecuteDeleteAsync(stop);
        var open = await db.DeviceFiles.Where(f => f.ImportedAt == null && lying.Contains(f.Id)).Select(f => f.Id).ToListAsync(stop);
        var gone = lying.Except(open).Where(id => store.IsOlder(id, since)).ToList();
        foreach (var id in gone) store.Remove(id);
        return gone.Count;
    }
}

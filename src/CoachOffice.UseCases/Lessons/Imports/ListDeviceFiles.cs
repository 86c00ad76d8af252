using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Lessons.Imports;

/// <summary>The files of a student: those imported, and the account's own that are open.</summary>
public sealed class ListDeviceFiles(OfficeDb db, PracticeClock clock)
{
    private const int Most = 100;

    /// <summary>The newest first.</summary>
    public async Task<Outcome<IReadOnlyList<DeviceFileRow>>> Of(StudentId student, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayTeach || actor.Account is not { } account) return NotAllowed.To("import files");
        var zone = await clock.Zone(stop);
        var files = await db.DeviceFiles.AsNoTracking().Where(f => f.StudentId == student && (f.ImportedAt != null || f.Account == account))
            .OrderByDescending(f => f.OpenedAt).ThenByDescending(f => f.Id).Take(Most).ToListAsync(stop);
        return Outcome<IReadOnlyList<DeviceFileRow>>.Of([.. files.Select(f => new DeviceFileRow(f.Id, f.Name, f.ByName, f.ImportedAt?.InZone(zone).Date, f.Outcome?.Swings ?? 0))]);
    }
}

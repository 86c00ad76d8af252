using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Students.Imports;

/// <summary>The lists of students that were brought in, and the account's own that are open.</summary>
public sealed class ListStudentFiles(OfficeDb db, PracticeClock clock)
{
    private const int Most = 100;

    /// <summary>The newest first.</summary>
    public async Task<Outcome<IReadOnlyList<StudentFileRow>>> Now(Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayKeepStudents || actor.Account is not { } account) return NotAllowed.To("bring lists of students");
        var zone = await clock.Zone(stop);
        var files = await db.StudentFiles.AsNoTracking().Where(f => f.BroughtAt != null || f.Account == account)
            .OrderByDescending(f => f.OpenedAt).ThenByDescending(f => f.Id).Take(Most).ToListAsync(stop);
        return Outcome<IReadOnlyList<StudentFileRow>>.Of([.. files.Select(f => new StudentFileRow(f.Id, f.Name, f.ByName, f.BroughtAt?.InZone(zone).Date, f.Outcome, f.UndoneAt is not null))]);
    }
}

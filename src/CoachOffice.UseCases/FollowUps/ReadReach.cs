using CoachOffice.Data;
using CoachOffice.Domain.Students;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>Reads what may be sent to a student, and how it reaches them.</summary>
public sealed class ReadReach(OfficeDb db, PracticeClock clock)
{
    /// <summary>Null when there is no such student, or the person was erased.</summary>
    public async Task<ReachView?> Of(StudentId id, CancellationToken stop = default)
    {
        if (await db.Students.AsNoTracking().SingleOrDefaultAsync(s => s.Id == id && s.ErasedAt == null, stop) is not { } student) return null;
        return new ReachView { Student = student, IsMinor = student.BirthDate is { } born && Ages.IsMinor(born, await clock.Today(stop)) };
    }
}

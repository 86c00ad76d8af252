using CoachOffice.Data;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Students;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Access;

/// <summary>Which private links to a student's lessons are open. The links themselves are kept nowhere.</summary>
public sealed class ReadVisitLinks(OfficeDb db, PracticeClock clock)
{
    /// <summary>The student and their open links, or null when there is no such student.</summary>
    public async Task<VisitLinksView?> Of(StudentId id, CancellationToken stop = default)
    {
        var student = await db.Students.AsNoTracking().SingleOrDefaultAsync(s => s.Id == id && s.ErasedAt == null, stop);
        if (student is null) return null;
        var now = clock.Now;
        var open = await db.PrivateLinks.Where(l => l.StudentId == id && l.Purpose == LinkPurpose.Visits && l.RevokedAt == null && l.ExpiresAt > now).Select(l => l.LastOpenedAt).ToListAsync(stop);
        var isMinor = student.BirthDate is { } born && Ages.IsMinor(born, await clock.Today(stop));
        return new VisitLinksView(student.FullName, isMinor, open.Count, open.Max(), await clock.Zone(stop));
    }
}

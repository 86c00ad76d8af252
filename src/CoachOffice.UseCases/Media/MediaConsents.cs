using CoachOffice.Data;
using CoachOffice.Domain.Media;
using CoachOffice.Domain.Students;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Media;

/// <summary>Whether media of a student may be kept and shown today.</summary>
public sealed class MediaConsents(OfficeDb db, PracticeClock clock)
{
    /// <summary>The consent recorded last, or null.</summary>
    public Task<MediaConsent?> Last(StudentId student, CancellationToken stop = default) =>
        db.MediaConsents.Where(c => c.StudentId == student).OrderByDescending(c => c.RecordedAt).ThenByDescending(c => c.Id).FirstOrDefaultAsync(stop);

    /// <summary>What holds today.</summary>
    public async Task<MediaPermission> For(Student student, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(student);
        return MediaLaw.On(student, await Last(student.Id, stop), await clock.Today(stop));
    }
}

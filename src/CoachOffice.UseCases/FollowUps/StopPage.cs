using CoachOffice.Data;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>Shows what a stop link would stop; changes nothing, because mail scanners open links.</summary>
public sealed class StopPage(OfficeDb db, PrivateLinks links, PracticeClock clock)
{
    /// <summary>What the link allows, or null.</summary>
    public async Task<StopPass?> Of(string token, CancellationToken stop = default)
    {
        if (await links.OpenStop(token, stop) is not { } link) return null;
        var student = await db.Students.AsNoTracking().SingleAsync(s => s.Id == link.StudentId, stop);
        return new StopPass
        {
            StudentId = student.Id,
            Purpose = link.Stops ?? MessagePurpose.Encouragement,
            Practice = await db.Practices.Select(p => p.Name).SingleAsync(stop),
            Stopped = MessagePurposes.OfStudents.Where(p => student.StoppedAt(p) is not null).ToDictionary(p => p, p => student.StoppedAt(p)!.Value),
            ForGuardian = student.BirthDate is { } born && Ages.IsMinor(born, await clock.Today(stop)),
            Withdrawn = student.GuardianWithdrewAt is not null,
        };
    }
}

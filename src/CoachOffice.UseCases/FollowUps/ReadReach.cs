using CoachOffice.Data;
using CoachOffice.Domain.FollowUps;
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
        var today = await clock.Today(stop);
        return new ReachView
        {
            Student = student,
            Zone = await clock.Zone(stop),
            IsMinor = student.BirthDate is { } born && Ages.IsMinor(born, today),
            Bounces = student.RecipientOn(today) is { } recipient ? await Bounces(MailBounce.HashOf(recipient.Address), stop) : [],
        };
    }

    private async Task<IReadOnlyList<MailBounce>> Bounces(string address, CancellationToken stop) =>
        await db.MailBounces.AsNoTracking().Where(b => b.AddressSha256 == address).OrderByDescending(b => b.ReceivedAt).Take(20).ToListAsync(stop);
}

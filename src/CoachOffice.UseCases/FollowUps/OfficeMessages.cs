using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Students;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>Writes and takes back messages that belong to no plan, in the transaction of what causes them. Their letters are written by an <see cref="IOfficeLetter"/>.</summary>
public sealed class OfficeMessages(OfficeDb db, INewIds ids, IClock clock)
{
    /// <summary>Writes a message; the same cause twice stays one message.</summary>
    public async Task Write(DueMessage due, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(due);
        var key = due.OnceKey;
        if (db.Messages.Local.Any(m => m.OnceKey == key) || await db.Messages.AnyAsync(m => m.OnceKey == key, stop)) return;
        db.Messages.Add(Message.Due(ids.Next(), due, clock.GetCurrentInstant()));
    }

    /// <summary>What still waits to speak of a thing, in kinds named, is not wanted any more; how many that were.</summary>
    /// <param name="about">The thing, and whose message where not everybody's.</param>
    /// <param name="kinds">Only these.</param>
    /// <param name="why">A code for the coach.</param>
    /// <param name="stop">Ends the call early.</param>
    public Task<int> EndAbout((Guid Subject, StudentId? Student) about, IReadOnlyList<MessageKind> kinds, string why, CancellationToken stop = default) =>
        db.Messages.Where(m => m.SubjectId == about.Subject && (about.Student == null || m.StudentId == about.Student) && kinds.Contains(m.Kind) && m.State != MessageState.Sent && m.State != MessageState.Skipped)
            .ExecuteUpdateAsync(m => m.SetProperty(x => x.State, MessageState.Skipped).SetProperty(x => x.LastProblem, why), stop);
}

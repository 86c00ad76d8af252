using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Students;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>Writes and takes back messages that belong to no plan, in the transaction of what causes them. Their letters are written by an <see cref="IOfficeLetter"/>.</summary>
public sealed class OfficeMessages(OfficeDb db, INewIds ids, IClock clock, ReadMessageRules rules)
{
    private const int KeysInOneQuestion = 400;

    /// <summary>Writes a message; the same cause twice stays one message. A kind the practice turned off is not written; one that is to wait for the coach waits.</summary>
    public async Task Write(DueMessage due, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(due);
        await WriteAll([due], stop);
    }

    /// <summary>Writes many; how many of them are new.</summary>
    public async Task<int> WriteAll(IReadOnlyList<DueMessage> all, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(all);
        var (on, written) = (await rules.All(stop), 0);
        var known = db.Messages.Local.Select(m => m.OnceKey).ToHashSet(StringComparer.Ordinal);
        foreach (var some in all.Where(d => on[d.Kind].IsOn && known.Add(d.OnceKey)).Chunk(KeysInOneQuestion))
        {
            var keys = some.Select(d => d.OnceKey).ToList();
            var there = (await db.Messages.Where(m => keys.Contains(m.OnceKey)).Select(m => m.OnceKey).ToListAsync(stop)).ToHashSet(StringComparer.Ordinal);
            foreach (var due in some.Where(d => !there.Contains(d.OnceKey)))
            {
                Add(due, on[due.Kind]);
                written++;
            }
        }

        return written;
    }

    /// <summary>What still waits to speak of a thing, in kinds named, is not wanted any more; how many that were.</summary>
    /// <param name="about">The thing, and whose message where not everybody's.</param>
    /// <param name="kinds">Only these.</param>
    /// <param name="why">A code for the coach.</param>
    /// <param name="stop">Ends the call early.</param>
    public Task<int> EndAbout((Guid Subject, StudentId? Student) about, IReadOnlyList<MessageKind> kinds, string why, CancellationToken stop = default) =>
        db.Messages.Where(m => m.SubjectId == about.Subject && (about.Student == null || m.StudentId == about.Student) && kinds.Contains(m.Kind) && m.State != MessageState.Sent && m.State != MessageState.Skipped)
            .ExecuteUpdateAsync(m => m.SetProperty(x => x.State, MessageState.Skipped).SetProperty(x => x.LastProblem, why), stop);

    private void Add(DueMessage due, MessageRule rule)
    {
        var message = Message.Due(ids.Next(), due, clock.GetCurrentInstant());
        if (rule.WaitsForCoach) message.AwaitApproval();
        db.Messages.Add(message);
    }
}

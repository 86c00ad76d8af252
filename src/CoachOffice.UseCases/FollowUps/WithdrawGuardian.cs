using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>The guardian of a minor withdraws: nothing goes out about the student any more, not even what was approved, and the coach is told what would have gone.</summary>
public sealed class WithdrawGuardian(OfficeDb db, AuditTrail trail, PracticeClock clock)
{
    /// <summary>The student's id, or why not. Said to a person of the practice, or by the guardian's own link (then the actor is the student's side).</summary>
    public async Task<Outcome<StudentId>> Of(StudentId student, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayKeepStudents && actor != Actor.Student) return NotAllowed.To("change what students receive");
        await using var transaction = await db.Database.BeginTransactionAsync(stop);
        var found = await db.Students.SingleOrDefaultAsync(s => s.Id == student && s.ErasedAt == null, stop);
        if (found is null) return new Refusal("student-not-found", "There is no such student.");
        if (found.BirthDate is not { } born || !Ages.IsMinor(born, await clock.Today(stop))) return StopRefusals.Guardian;
        if (found.GuardianWithdrewAt is not null) return student;
        found.GuardianWithdraws(clock.Now);
        trail.Add(actor, "guardian-withdrew", AuditSubject.Of(student));
        if (await db.TrySave(stop) != Saved.Yes) return new Refusal(Clash.Code, "Someone changed this student just now; look again, then repeat it.");
        await End(student, stop);
        await transaction.CommitAsync(stop);
        return student;
    }

    // What was only encouragement is over; what a person has to be told otherwise goes to the coach.
    private async Task End(StudentId student, CancellationToken stop)
    {
        var soft = MessagePurposes.EndedBy(MessagePurpose.Encouragement);
        IReadOnlyList<MessageKind> office = [.. Enum.GetValues<MessageKind>().Where(k => MessagePurposes.Of(k) == MessagePurpose.Office)];
        var open = db.Messages.Where(m => m.StudentId == student && (m.State == MessageState.Waiting || m.State == MessageState.Held));
        await open.Where(m => soft.Contains(m.Kind)).ExecuteUpdateAsync(m => m.SetProperty(x => x.State, MessageState.Skipped).SetProperty(x => x.LastProblem, Problems.GuardianWithdrew), stop);
        await open.Where(m => !soft.Contains(m.Kind) && !office.Contains(m.Kind))
            .ExecuteUpdateAsync(m => m.SetProperty(x => x.State, MessageState.NeedsAttention).SetProperty(x => x.LastProblem, Problems.GuardianWithdrew), stop);
    }
}

using CoachOffice.Data;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.FollowUps;
using Microsoft.EntityFrameworkCore;
using NodaTime;
using NodaTime.Text;

namespace CoachOffice.UseCases.Plans;

/// <summary>Keeps at most one note waiting for a plan. Minors, and people who asked for no more, get none.</summary>
public sealed class Encouraging(OfficeDb db, PlanMessages messages, PracticeDays days)
{
    private static readonly Period Lately = Period.FromDays(60);

    /// <summary>The next note counts from a day: the start of the plan, or of practice. One that waits is moved, else one is written.</summary>
    public async Task After(Plan plan, LocalDate day, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var on = Encouragement.FirstAfter(day, await Rhythm(plan, day, stop));
        if (await messages.MoveNudge(plan.Id, (await days.Dates(stop)).Morning(on), stop)) return;
        await Write(plan, on, stop);
    }

    /// <summary>After a note went out: one more later, until two are unanswered.</summary>
    public async Task AfterNote(Plan plan, LocalDate sentOn, int unanswered, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (unanswered < Encouragement.MostUnanswered) await Write(plan, Encouragement.NextAfter(sentOn), stop);
    }

    // Habits outlast a plan: what the student did in the weeks before counts too.
    private async Task<PracticeRhythm> Rhythm(Plan plan, LocalDate day, CancellationToken stop)
    {
        var (student, since) = (plan.StudentId, day.Minus(Lately));
        var practised = await db.CheckIns.Where(c => c.StudentId == student && c.Minutes > 0 && c.PracticedOn >= since).Select(c => c.PracticedOn).Distinct().ToListAsync(stop);
        var agreed = await db.Students.Where(s => s.Id == student).Select(s => s.DaysPerWeek).SingleAsync(stop);
        return PracticeRhythm.Of([.. practised, .. db.CheckIns.Local.Where(c => c.StudentId == student && c.Minutes > 0).Select(c => c.PracticedOn)], agreed);
    }

    private async Task Write(Plan plan, LocalDate on, CancellationToken stop)
    {
        var student = await db.Students.AsNoTracking().SingleAsync(s => s.Id == plan.StudentId, stop);
        if (student.MessagesStoppedAt is not null || (student.BirthDate is { } born && Ages.IsMinor(born, on))) return;
        await messages.Write(
            new DueMessage
            {
                Kind = MessageKind.PracticeNudge,
                StudentId = plan.StudentId,
                PlanId = plan.Id,
                DueAt = (await days.Dates(stop)).Morning(on),
                Reason = $"no practice note for {Period.Between(await days.Today(stop), on, PeriodUnits.Days).Days} days",
                Occasion = LocalDatePattern.Iso.Format(on),
            },
            stop);
    }
}

using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.FollowUps;
using CoachOffice.UseCases.Plans;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Insight;

/// <summary>Shows what needs a person now. The desk sees only what concerns the desk.</summary>
public sealed class TodayPage(OfficeDb db, PlanBooks books, PracticeClock clock, NotedPlans noted, StuckMessages stuck)
{
    /// <summary>Rows of a list at first sight; who has more to do starts at its top.</summary>
    public const int Short = 10;

    /// <summary>Rows of a list shown whole. Pain reports are never shortened further.</summary>
    public const int Most = 100;

    private static readonly Duration Lately = Duration.FromDays(60);

    // Who practises every day moves the re-test on every day: some days past the stage's end a person could ask for a day of rest.
    private const int DaysPastTheEnd = 3;

    /// <summary>The day, most urgent first.</summary>
    /// <param name="actor">Who looks.</param>
    /// <param name="most">Rows of a list at most.</param>
    /// <param name="stop">Ends the reading early.</param>
    public async Task<TodayView> For(Actor actor, int most = Most, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        var today = await clock.Today(stop);
        var rows = most + 1;
        return new TodayView
        {
            Today = today,
            Safety = actor.MayTeach ? await Safety.Rows(db, Most, stop) : [],
            Lessons = new(actor.MayKeepStudents ? await Lessons.Rows(db, today, rows, stop) : [], most),
            Drafts = new(actor.MayTeach ? await Drafts.Rows(db, rows, stop) : [], most),
            Retests = new(actor.MayTeach ? await Retests(today, rows, stop) : [], most),
            Messages = new(actor.MayKeepStudents ? await stuck.Now(rows, stop) : [], most),
            Silent = new(actor.MayTeach ? await Silent(rows, stop) : [], most),
        };
    }

    private static readonly CompiledQuery<int, SafetyAlert> Safety = new((db, most) =>
        (from note in db.CheckIns
         join student in db.Students on note.StudentId equals student.Id
         where note.Pain && note.SeenAt == null && student.ErasedAt == null
         orderby note.Emergency descending, note.At
         select new SafetyAlert
         {
             StudentId = student.Id,
             StudentName = (student.GivenName + " " + student.FamilyName).Trim(),
             PlanId = note.PlanId,
             CheckInId = note.Id,
             Emergency = note.Emergency,
             Region = note.PainRegion,
             At = note.At,
         }).Take(most));

    private static readonly CompiledQueryOfTwo<LocalDate, int, TodayLesson> Lessons = new((db, today, most) =>
        from lesson in db.Lessons.Where(l => l.HeldOn == today && l.Kind == LessonKind.Lesson).OrderBy(l => l.CreatedAt).ThenBy(l => l.Id).Take(most)
        join student in db.Students on lesson.StudentId equals student.Id
        orderby lesson.CreatedAt, lesson.Id
        select new TodayLesson(lesson.Id, student.Id, (student.GivenName + " " + student.FamilyName).Trim(), lesson.Club, db.Plans.Any(p => p.LessonId == lesson.Id)));

    private static readonly CompiledQuery<int, TodayDraft> Drafts = new((db, most) =>
        (from plan in db.Plans
         join student in db.Students on plan.StudentId equals student.Id
         where plan.Status == PlanStatus.Draft && student.ArchivedAt == null
         orderby plan.CreatedAt, plan.Id
         select new TodayDraft(plan.Id, student.Id, (student.GivenName + " " + student.FamilyName).Trim(), plan.CreatedAt)).Take(most));

    private async Task<IReadOnlyList<TodayRetest>> Retests(LocalDate today, int most, CancellationToken stop)
    {
        var due = await Due.Rows(db, today, most, stop);
        if (due.Count < most) due.AddRange((await PutOff(today, stop)).Take(most - due.Count));
        if (due.Count == 0) return [];
        var book = await books.InForce(stop);
        return [.. due.Select(d => new TodayRetest(d.Id, d.StudentId, d.Name, FaultWords.Measure(book, FaultId.Parse(d.Fault)), d.Ended ?? d.DueOn, d.IsSecondLook) { RestFirst = d.DueOn > today, Answered = d.Answered, Asked = d.Asked })];
    }

    private static readonly CompiledQueryOfTwo<LocalDate, int, WaitingLook> Due = new((db, today, most) =>
        (from look in db.Retests
         join student in db.Students on look.StudentId equals student.Id
         join plan in db.Plans on look.PlanId equals plan.Id
         where look.Status == RetestStatus.Ready && look.DueOn <= today && student.ArchivedAt == null && (plan.Status == PlanStatus.Active || plan.Status == PlanStatus.Completed)
         orderby look.DueOn, look.Id
         select new WaitingLook(look.Id, look.StudentId, (student.GivenName + " " + student.FamilyName).Trim(), look.Fault, look.DueOn, null)
         {
             IsSecondLook = look.IsSecondLook,
             Answered = look.AnsweredAt != null,
             Asked = db.Messages.Count(m => m.PlanId == look.PlanId && m.Kind == MessageKind.RetestPrompt && m.State == MessageState.Sent && m.SubjectId == look.Id),
         }).Take(most));

    private static readonly CompiledQuery<LocalDate, PlanId> PractisedSince = new((db, day) => db.CheckIns.Where(c => c.PracticedOn >= day).Select(c => c.PlanId).Take(1));

    // Begins at who practised since yesterday, who are few whatever the size of the office; a database left to choose would begin at all re-tests to come.
    private async Task<IEnumerable<WaitingLook>> PutOff(LocalDate today, CancellationToken stop)
    {
        var (longPast, yesterday) = (today.PlusDays(-DaysPastTheEnd), today.PlusDays(-1));
        if (await PractisedSince.Rows(db, yesterday, stop) is []) return [];
        var stages = await db.PlanStages
            .Where(s => s.Status == StageStatus.Current && s.DueOn <= longPast && db.CheckIns.Where(c => c.PracticedOn >= yesterday).Select(c => c.PlanId).Contains(s.PlanId))
            .Select(s => s.Id).ToListAsync(stop);
        if (stages.Count == 0) return [];
        var looks = await (
            from look in db.Retests
            join student in db.Students on look.StudentId equals student.Id
            join plan in db.Plans on look.PlanId equals plan.Id
            join stage in db.PlanStages on look.StageId equals stage.Id
            where stages.Contains(look.StageId)
            select new { look.Status, IsLive = student.ArchivedAt == null && (plan.Status == PlanStatus.Active || plan.Status == PlanStatus.Completed), Waiting = new WaitingLook(look.Id, look.StudentId, (student.GivenName + " " + student.FamilyName).Trim(), look.Fault, look.DueOn, stage.DueOn) { IsSecondLook = look.IsSecondLook } }).ToListAsync(stop);
        return looks.Where(l => l is { Status: RetestStatus.Ready, IsLive: true, Waiting.IsSecondLook: false } && l.Waiting.DueOn > today).Select(l => l.Waiting).OrderBy(w => w.DueOn).ThenBy(w => w.Id);
    }

    // Two notes out since the last check-in: the program has done what it may, now a person could ask. Older silences are on the students' own pages.
    private async Task<IReadOnlyList<TodaySilence>> Silent(int most, CancellationToken stop)
    {
        var plans = await noted.Since(db, clock.Now - Lately, stop);
        if (plans.Count == 0) return [];
        var quiet = await (
            from plan in db.Plans
            join student in db.Students on plan.StudentId equals student.Id
            where plans.Contains(plan.Id) && plan.Status == PlanStatus.Active && student.ArchivedAt == null
            let id = plan.Id
            let last = db.CheckIns.Where(c => c.PlanId == id).Max(c => (Instant?)c.At)
            where db.Messages.Count(m => m.PlanId == id && (m.Kind == MessageKind.PracticeNudge || m.Kind == MessageKind.WeeklyCheckIn) && m.State == MessageState.Sent && (last == null || m.SentAt > last)) >= Encouragement.MostUnanswered
            orderby id
            select new { student.Id, Name = (student.GivenName + " " + student.FamilyName).Trim(), Plan = id, Last = db.CheckIns.Where(c => c.PlanId == id).Max(c => (LocalDate?)c.PracticedOn) }).Take(most).ToListAsync(stop);
        return [.. quiet.Select(q => new TodaySilence(q.Id, q.Name, q.Plan, q.Last))];
    }

    private sealed record WaitingLook(Guid Id, StudentId StudentId, string Name, string Fault, LocalDate DueOn, LocalDate? Ended)
    {
        public bool IsSecondLook { get; init; }

        public bool Answered { get; init; }

        public int Asked { get; init; }
    }
}

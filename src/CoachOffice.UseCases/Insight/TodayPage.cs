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
public sealed class TodayPage(OfficeDb db, PlanBooks books, PracticeClock clock)
{
    // A list for one day; who has more to do starts at its top.
    private const int Most = 100;
    private static readonly Duration Lately = Duration.FromDays(60);

    // Who practises every day moves the re-test on every day: some days past the stage's end a person could ask for a day of rest.
    private const int DaysPastTheEnd = 3;

    /// <summary>The day, most urgent first.</summary>
    public async Task<TodayView> For(Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        var today = await clock.Today(stop);
        return new TodayView
        {
            Today = today,
            Safety = actor.MayTeach ? await Safety().ToListAsync(stop) : [],
            Lessons = actor.MayKeepStudents ? await Lessons(today).ToListAsync(stop) : [],
            Drafts = actor.MayTeach ? await Drafts().ToListAsync(stop) : [],
            Retests = actor.MayTeach ? await Retests(today, stop) : [],
            Messages = actor.MayKeepStudents ? await Messages(stop) : [],
            Silent = actor.MayTeach ? await Silent(stop) : [],
        };
    }

    private IQueryable<SafetyAlert> Safety() =>
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
         }).Take(Most);

    private IQueryable<TodayLesson> Lessons(LocalDate today) =>
        (from lesson in db.Lessons
         join student in db.Students on lesson.StudentId equals student.Id
         where lesson.HeldOn == today && lesson.Kind == LessonKind.Lesson
         orderby lesson.CreatedAt, lesson.Id
         select new TodayLesson(lesson.Id, student.Id, (student.GivenName + " " + student.FamilyName).Trim(), lesson.Club, db.Plans.Any(p => p.LessonId == lesson.Id))).Take(Most);

    private IQueryable<TodayDraft> Drafts() =>
        (from plan in db.Plans
         join student in db.Students on plan.StudentId equals student.Id
         where plan.Status == PlanStatus.Draft && student.ArchivedAt == null
         orderby plan.CreatedAt, plan.Id
         select new TodayDraft(plan.Id, student.Id, (student.GivenName + " " + student.FamilyName).Trim(), plan.CreatedAt)).Take(Most);

    private async Task<IReadOnlyList<TodayRetest>> Retests(LocalDate today, CancellationToken stop)
    {
        var due = await Due(today).Take(Most).ToListAsync(stop);
        if (due.Count < Most) due.AddRange((await PutOff(today, stop)).Take(Most - due.Count));
        if (due.Count == 0) return [];
        var book = await books.InForce(stop);
        return [.. due.Select(d => new TodayRetest(d.Id, d.StudentId, d.Name, FaultWords.Measure(book, FaultId.Parse(d.Fault)), d.DueOn <= today ? d.DueOn : d.Ended!.Value, d.IsSecondLook) { RestFirst = d.DueOn > today })];
    }

    private IQueryable<WaitingLook> Due(LocalDate today) =>
        from look in db.Retests
        join student in db.Students on look.StudentId equals student.Id
        join plan in db.Plans on look.PlanId equals plan.Id
        join stage in db.PlanStages on look.StageId equals stage.Id
        where look.Status == RetestStatus.Ready && look.DueOn <= today && student.ArchivedAt == null && (plan.Status == PlanStatus.Active || plan.Status == PlanStatus.Completed)
        orderby look.DueOn, look.Id
        select new WaitingLook(look.Id, look.StudentId, (student.GivenName + " " + student.FamilyName).Trim(), look.Fault, look.DueOn, stage.DueOn) { IsSecondLook = look.IsSecondLook };

    // Begins at who practised since yesterday, who are few whatever the size of the office; a database left to choose would begin at all re-tests to come.
    private async Task<IEnumerable<WaitingLook>> PutOff(LocalDate today, CancellationToken stop)
    {
        var (longPast, yesterday) = (today.PlusDays(-DaysPastTheEnd), today.PlusDays(-1));
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

    private async Task<IReadOnlyList<TodayMessage>> Messages(CancellationToken stop)
    {
        var stuck = await (
            from message in db.Messages
            join student in db.Students on message.StudentId equals student.Id
            where message.State == MessageState.NeedsAttention
            orderby message.DueAt, message.Id
            select new TodayMessage(message.Id, student.Id, (student.GivenName + " " + student.FamilyName).Trim(), message.Kind, message.LastProblem ?? "unknown")).Take(Most).ToListAsync(stop);
        return [.. stuck.Select(m => m with { Problem = Problems.InWords(m.Problem) })];
    }

    // Two notes out since the last check-in: the program has done what it may, now a person could ask. Older silences are on the students' own pages.
    private async Task<IReadOnlyList<TodaySilence>> Silent(CancellationToken stop)
    {
        var since = clock.Now - Lately;
        var noted = db.Messages.Where(m => m.State == MessageState.Sent && m.DueAt >= since && m.Kind == MessageKind.PracticeNudge)
            .GroupBy(m => m.PlanId).Where(g => g.Count() >= Encouragement.MostUnanswered).Select(g => g.Key);
        var quiet = await (
            from id in noted
            join plan in db.Plans on id equals plan.Id
            join student in db.Students on plan.StudentId equals student.Id
            where plan.Status == PlanStatus.Active && student.ArchivedAt == null
            let last = db.CheckIns.Where(c => c.PlanId == id).Max(c => (Instant?)c.At)
            where db.Messages.Count(m => m.PlanId == id && m.Kind == MessageKind.PracticeNudge && m.State == MessageState.Sent && (last == null || m.SentAt > last)) >= Encouragement.MostUnanswered
            orderby id
            select new { student.Id, Name = (student.GivenName + " " + student.FamilyName).Trim(), Plan = id, Last = db.CheckIns.Where(c => c.PlanId == id).Max(c => (LocalDate?)c.PracticedOn) }).Take(Most).ToListAsync(stop);
        return [.. quiet.Select(q => new TodaySilence(q.Id, q.Name, q.Plan, q.Last))];
    }

    private sealed record WaitingLook(Guid Id, StudentId StudentId, string Name, string Fault, LocalDate DueOn, LocalDate? Ended)
    {
        public bool IsSecondLook { get; init; }
    }
}

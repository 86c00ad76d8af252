using CoachOffice.Data;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.FollowUps;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Plans;

/// <summary>When a student was taught and when they practised: what dates of follow-ups hang on.</summary>
public sealed class PracticeDays(OfficeDb db, PracticeClock clock)
{
    private static readonly Period LessonsBack = Period.FromDays(60);

    /// <summary>Now, to the millisecond.</summary>
    public Instant Now => clock.Now;

    /// <summary>Today in the practice's zone.</summary>
    public Task<LocalDate> Today(CancellationToken stop = default) => clock.Today(stop);

    /// <summary>The arithmetic of dates in the practice's zone.</summary>
    public async Task<FollowUpDates> Dates(CancellationToken stop = default) => new(await clock.Zone(stop));

    /// <summary>Lessons before this day matter no more to any date.</summary>
    public async Task<LocalDate> TaughtSince(CancellationToken stop = default) => (await clock.Today(stop)).Minus(LessonsBack);

    /// <summary>Days of lessons in the last two months and later; a re-test is no lesson.</summary>
    public async Task<IReadOnlyList<LocalDate>> Taught(StudentId student, CancellationToken stop = default)
    {
        var since = await TaughtSince(stop);
        return await db.Lessons.Where(l => l.StudentId == student && l.Kind == LessonKind.Lesson && l.HeldOn >= since).Select(l => l.HeldOn).Distinct().ToListAsync(stop);
    }

    /// <summary>The end of the last logged practice of a plan, or null.</summary>
    public async Task<Instant?> Last(PlanId plan, CancellationToken stop = default)
    {
        var dates = await Dates(stop);
        var latest = await db.CheckIns.Where(c => c.PlanId == plan && c.Minutes > 0).OrderByDescending(c => c.PracticedOn).ThenByDescending(c => c.At)
            .Select(c => new { c.At, c.PracticedOn }).FirstOrDefaultAsync(stop);
        return latest is null ? null : dates.PracticeEnd(latest.At, latest.PracticedOn);
    }
}

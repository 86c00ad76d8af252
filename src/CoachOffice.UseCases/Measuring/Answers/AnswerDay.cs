using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Plans;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Measuring.Answers;

/// <summary>Whether a number read on a day says what stays: never on a lesson's day (after Guadagnoli et al. 2002), nor within 24 hours of practice.</summary>
public sealed class AnswerDay(OfficeDb db, PracticeDays days)
{
    private static readonly Duration Rest = Duration.FromHours(24);

    /// <summary>Now, to the millisecond.</summary>
    public Instant Now => days.Now;

    /// <summary>What stands against it, or null.</summary>
    public async Task<Refusal?> Check(LinkPass pass, LocalDate on, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(pass);
        if (on > await days.Today(stop)) return Wrong("Give the day of the swings: today or earlier.");
        var lesson = await db.Plans.Where(p => p.Id == pass.PlanId).Join(db.Lessons, p => p.LessonId, l => l.Id, (p, l) => l.HeldOn).SingleAsync(stop);
        if (on < lesson) return Wrong("The reading comes after the lesson it is compared with.");
        var taught = !Verdicts.MayJudge(lesson, on) || await db.Lessons.AnyAsync(l => l.StudentId == pass.StudentId && l.HeldOn == on && l.Kind == LessonKind.Lesson, stop);
        if (taught) return Wrong("A number read on the day of a lesson says little about what stays. Take it on another day.");
        var dates = await days.Dates(stop);
        var before = await db.CheckIns.Where(c => c.PlanId == pass.PlanId && c.Minutes > 0 && c.PracticedOn <= on).OrderByDescending(c => c.PracticedOn).ThenByDescending(c => c.At)
            .Select(c => new { c.At, c.PracticedOn }).FirstOrDefaultAsync(stop);
        if (before is null) return null;

        // A day's reading may be as late as that day's end.
        var rested = dates.DayOf(dates.PracticeEnd(before.At, before.PracticedOn) + Rest) <= on;
        return rested ? null : Wrong("Right after practice a number looks better than it is. Take it a day or more after the last practice.");
    }

    private static Refusal Wrong(string sentence) => new("answer-day", sentence, "On");
}

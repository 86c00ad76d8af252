using CoachOffice.SeedDemo.Swings;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.FollowUps;
using CoachOffice.UseCases.Students;
using NodaTime;

namespace CoachOffice.SeedDemo.Year;

/// <summary>One day at the academy: post, lessons, re-tests, approvals, post again, practice in the evening.</summary>
internal sealed class DemoDay(Scene scene, IReadOnlyList<StudentLife> lives)
{
    private const int OpenToSee = 60;
    private const int WindUpAfter = 24;
    private const int WindUpLater = 43;

    private static readonly LocalTime FirstPost = new(9, 5);
    private static readonly LocalTime Desk = new(9, 30);
    private static readonly LocalTime Lessons = new(10, 0);
    private static readonly LocalTime Readings = new(16, 0);
    private static readonly LocalTime Approvals = new(18, 0);
    private static readonly LocalTime LastPost = new(18, 30);
    private static readonly LocalTime Practice = new(19, 0);

    private readonly LessonHour _lessons = new(scene);
    private readonly RetestHour _retests = new(scene, lives);
    private readonly PracticeHour _practice = new(scene);
    private readonly Happenings _happenings = new(scene);
    private readonly DiaryHour _diary = new(scene, lives);

    /// <summary>Lets it pass.</summary>
    public async Task Pass(LocalDate day, CancellationToken stop)
    {
        var before = scene.Calendar.Before(day);
        if (before > 0) await Post(day, FirstPost, stop);
        await Each(day, Desk, lives.Where(l => l.Persona.JoinedBefore == before), l => Register(l, stop));
        foreach (var (life, deed) in from l in lives from h in l.Persona.Happens where h.DaysBefore == before select (l, h.What))
            await Each(day, Desk, [life], l => _happenings.Let(deed, l, day, stop));
        await Each(day, Desk, lives.Where(l => IsOld(l, day)), l => _happenings.WindUp(l, stop));
        await _diary.Morning(day, stop);
        await Each(day, Lessons, lives.Where(l => l.IsTaughtOn(day)), l => _lessons.Hold(l, day, stop));
        scene.Office.Clock.Advance(scene.Calendar.At(day, Readings));
        await _retests.Pass(day, stop);
        await _diary.Evening(day, stop);
        var approved = lives.Where(l => l.ToApprove is not null).ToList();
        await Each(day, Approvals, approved, l => _lessons.Approve(l, day, stop));
        if (approved.Count > 0) await Post(day, LastPost, stop);
        await Each(day, Practice, lives.Where(l => l.Plan is not null && l.Pass is not null && l.NextPractice == day), l => _practice.Pass(l, day, stop));
    }

    // Ten minutes for each, one after the other.
    private async Task Each(LocalDate day, LocalTime from, IEnumerable<StudentLife> who, Func<StudentLife, Task> act)
    {
        foreach (var (life, place) in who.ToList().Select((l, i) => (l, i)))
        {
            scene.Office.Clock.Advance(scene.Calendar.At(day, from.PlusMinutes(10 * place)));
            await act(life);
        }
    }

    // Plans of the past were wound up after five or six weeks; those of the last months are still open to see.
    private bool IsOld(StudentLife life, LocalDate day) =>
        life.Plan is not null && scene.Calendar.Before(day) > OpenToSee && Period.Between(life.PlanFrom, day, PeriodUnits.Days).Days == (life.Seat % 3 == 0 ? WindUpLater : WindUpAfter);

    private async Task Register(StudentLife life, CancellationToken stop)
    {
        var details = life.Persona.On(scene.Calendar.Today);
        life.Id = await scene.Office.Must((RegisterStudent register) => register.From(details, life.Seat % 3 == 0 ? life.Coach : scene.Cast.Desk, stop));
        life.IsRegistered = true;
    }

    private async Task Post(LocalDate day, LocalTime time, CancellationToken stop)
    {
        scene.Office.Clock.Advance(scene.Calendar.At(day, time));
        await scene.Office.Do((SweepMessages sweep) => sweep.Once(stop));
        foreach (var token in scene.Office.Door.TakePlans())
        {
            var pass = await scene.Office.Do((PrivateLinks links) => links.Open(token, stop: stop)) ?? throw new InvalidOperationException("A plan was delivered with a link that opens nothing.");
            var life = lives.Single(l => l.Id == pass.StudentId);
            life.Pass = pass;
            await _practice.Receive(life, day, stop);
        }
    }
}

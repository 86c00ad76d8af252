using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.SeedDemo.Builders;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.FollowUps;
using CoachOffice.UseCases.Lessons;
using CoachOffice.UseCases.Plans;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Plans;

/// <summary>A student with a driver lesson in which the head runs toward the target on the way down, and what grows from it.</summary>
public sealed record Scene(TestOffice Office, StudentId Student, LessonId Lesson, PlanId Plan)
{
    public const string HeadShift = "downswing-head-shift";

    public static StudentDetails Adult { get; } = AStudent.Named("Ida", "Marsh") with { MinutesPerWeek = 90 };

    public LinkPass Pass => new(Student, Plan, Guid.Empty);

    /// <summary>Up to the draft.</summary>
    public static async Task<Scene> Drafted(TestOffice office, StudentDetails? details = null)
    {
        var student = await office.Register(details ?? Adult);
        var lesson = await LessonOf(office, student, new LocalDate(2026, 3, 2));
        var plan = await office.Must((DraftPlan draft) => draft.For(lesson, office.Coach));
        return new Scene(office, student, lesson, plan);
    }

    /// <summary>Up to the approved plan.</summary>
    public static async Task<Scene> Approved(TestOffice office, StudentDetails? details = null)
    {
        var scene = await Drafted(office, details);
        await office.Must((ApprovePlan approve) => approve.Now(scene.Plan, 1, office.Coach));
        return scene;
    }

    public static async Task<LessonId> LessonOf(TestOffice office, StudentId student, LocalDate day, string headShift = "12 13 11")
    {
        var heading = new LessonHeading(day, Club.Driver);
        var lesson = await office.Must((StartLesson start) => start.For(student, heading, office.Coach));
        var form = new LessonForm { Heading = heading, Entries = [Entry(HeadShift, headShift), Entry("impact-spine-tilt", "12 13 11"), Entry("address-spine-tilt", "8 8 8")] };
        await office.Must((SaveLesson save) => save.As(lesson, 1, form, office.Coach));
        return lesson;
    }

    public static MeasureEntry Entry(string measure, string text) => new() { Measure = measure, Text = text, FrameRate = "240" };

    public Task<Plan> Read() => Office.Read(db => db.Plans.AsNoTracking().Include(p => p.Stages).Include(p => p.Changes).SingleAsync(p => p.Id == Plan));

    public Task<List<Domain.FollowUps.Message>> Messages() => Office.Read(db => db.Messages.AsNoTracking().Where(m => m.PlanId == Plan).OrderBy(m => m.DueAt).ToListAsync());

    public Task<List<Retest>> Looks() => Office.Read(db => db.Retests.AsNoTracking().Where(r => r.PlanId == Plan).OrderBy(r => r.DueOn).ToListAsync());

    public async Task<PlanStage> Current() => (await Read()).Stages.First(s => s.Status == StageStatus.Current);

    public CheckInForm Practised(int minutes = 20, LocalDate? on = null) => new() { Id = new SeededIds(HashCode.Combine(Plan, Office.Now, on)).Next(), Minutes = minutes, PracticedOn = on, RepetitionsPercent = 90 };

    public Task<CheckInResult> CheckIn(CheckInForm form) => Office.Must((RecordCheckIn record) => record.From(form, Pass));

    public Task<SweepResult> Sweep() => Office.Do((SweepMessages sweep) => sweep.Once(CancellationToken.None));

    /// <summary>Moves the clock to a time of a day in the practice's zone.</summary>
    public void At(int month, int day, int hour = 9, int minute = 30) =>
        Office.Time.SetUtcNow(new LocalDateTime(2026, month, day, hour, minute).InZoneLeniently(DateTimeZoneProviders.Tzdb["Europe/London"]).ToDateTimeOffset());
}

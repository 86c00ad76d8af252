using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Insight;
using CoachOffice.UseCases.Plans;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Plans;

public abstract class RecordCheckInTests(OfficeFixture fixture)
{
    [Fact]
    public async Task Practice_late_in_the_stage_moves_the_retest_and_its_prompt_together()
    {
        var scene = await Scene.Approved(await fixture.Another(opened: true));
        scene.At(3, 8, 18);

        var result = await scene.CheckIn(scene.Practised());

        Assert.Equal(new LocalDate(2026, 3, 10), result.LookOn);
        Assert.Equal(new LocalDate(2026, 3, 10), (await scene.Looks()).Single().DueOn);
        var messages = await scene.Messages();
        Assert.Equal(Instant.FromUtc(2026, 3, 10, 9, 0), messages.Single(m => m.Kind == MessageKind.RetestPrompt).DueAt);
        Assert.Equal(Instant.FromUtc(2026, 3, 12, 9, 0), messages.Single(m => m.Kind == MessageKind.PracticeNudge).DueAt);
    }

    [Fact]
    public async Task The_same_form_posted_many_times_is_one_check_in()
    {
        var scene = await Scene.Approved(await fixture.Another(opened: true));
        scene.At(3, 4);
        var form = scene.Practised();

        var results = await Task.WhenAll(Enumerable.Range(0, 4).Select(_ => Task.Run(() => scene.CheckIn(form))));

        Assert.All(results, r => Assert.False(r.PlanPaused));
        Assert.Equal(1, await scene.Office.Read(db => db.CheckIns.CountAsync()));
    }

    [Fact]
    public async Task A_pain_report_pauses_plan_and_messages_at_once_and_tops_the_day()
    {
        var scene = await Scene.Approved(await fixture.Another(opened: true));
        scene.At(3, 4);

        var result = await scene.CheckIn(new CheckInForm { Id = new SeededIds(4).Next(), Pain = true, PainRegion = Region.LowerBack });

        Assert.Equal((true, false), (result.PlanPaused, result.Emergency));
        var plan = await scene.Read();
        Assert.Equal((PlanStatus.OnHold, "pain-report"), (plan.Status, plan.HoldReason));
        Assert.All(await scene.Messages(), m => Assert.Equal(MessageState.Held, m.State));
        Assert.Equal(0, (await scene.Sweep()).Sent);
        var today = await scene.Office.Do((TodayPage page) => page.For(scene.Office.Coach));
        var alert = Assert.Single(today.Safety);
        Assert.Equal(("Ida Marsh", (Region?)Region.LowerBack), (alert.StudentName, alert.Region));
    }

    [Fact]
    public async Task A_pain_report_with_an_unreadable_rest_is_still_taken()
    {
        var scene = await Scene.Approved(await fixture.Another(opened: true));
        scene.At(3, 4);

        var result = await scene.CheckIn(new CheckInForm
        {
            Id = new SeededIds(5).Next(),
            Minutes = -3,
            PracticedOn = new LocalDate(2031, 1, 1),
            RepetitionsPercent = 900,
            Signs = [EmergencySign.ChestPain],
            Comment = new string('x', 5000),
        });

        Assert.Equal((true, true, "112"), (result.PlanPaused, result.Emergency, result.EmergencyNumber));
        Assert.Equal(PlanStatus.OnHold, (await scene.Read()).Status);
    }

    [Fact]
    public async Task A_pain_report_for_a_plan_that_is_over_still_reaches_the_coach()
    {
        var scene = await Scene.Approved(await fixture.Another(opened: true));
        await scene.Office.Must((CompletePlan complete) => complete.Now(scene.Plan, 2, "enough", scene.Office.Coach));

        await scene.CheckIn(new CheckInForm { Id = new SeededIds(6).Next(), Pain = true });

        Assert.Single((await scene.Office.Do((TodayPage page) => page.For(scene.Office.Coach))).Safety);
    }

    [Fact]
    public async Task Only_a_coach_restarts_with_a_date_and_after_dealing_with_the_report()
    {
        var scene = await Scene.Approved(await fixture.Another(opened: true));
        var office = scene.Office;
        scene.At(3, 4);
        var report = new CheckInForm { Id = new SeededIds(7).Next(), Pain = true };
        await scene.CheckIn(report);
        scene.At(3, 10);
        var version = (await scene.Read()).Version;
        var on = new LocalDate(2026, 3, 12);

        Assert.Equal(NotAllowed.Code, (await office.Refuses((ResumePlan r) => r.On(scene.Plan, version, on, "talked", office.Desk))).Single().Code);
        Assert.Equal("pain-report-open", (await office.Refuses((ResumePlan r) => r.On(scene.Plan, version, on, "talked", office.Coach))).Single().Code);
        await office.Must((SeePainReport see) => see.Done(report.Id, office.Coach));
        Assert.Equal("restart-day", (await office.Refuses((ResumePlan r) => r.On(scene.Plan, version, new LocalDate(2026, 3, 9), "talked", office.Coach))).Single().Code);
        await office.Must((ResumePlan r) => r.On(scene.Plan, version, on, "talked, cleared by the student's physiotherapist", office.Coach));

        var plan = await scene.Read();
        Assert.Equal((PlanStatus.Active, on, new LocalDate(2026, 3, 17)), (plan.Status, plan.RestartsOn!.Value, (await scene.Current()).DueOn!.Value));
        var messages = await scene.Messages();
        Assert.All(messages, m => Assert.Equal(MessageState.Waiting, m.State));
        Assert.All(messages, m => Assert.True(m.DueAt >= Instant.FromUtc(2026, 3, 12, 9, 0)));
        Assert.Equal(Instant.FromUtc(2026, 3, 17, 9, 0), messages.Single(m => m.Kind == MessageKind.RetestPrompt).DueAt);
        Assert.True((await office.Do((PlanSheet sheet) => sheet.For(scene.Plan)))!.IsPaused);
    }

    [Fact]
    public async Task A_count_reached_on_two_separate_days_opens_the_gate()
    {
        var scene = await Scene.Approved(await fixture.Another(opened: true));
        var first = await scene.Current();
        scene.At(3, 4);
        Assert.False((await scene.CheckIn(scene.Practised() with { CountReached = true })).StageOpened);
        scene.At(3, 4, 15);
        Assert.False((await scene.CheckIn(scene.Practised() with { CountReached = true })).StageOpened);
        scene.At(3, 5);

        Assert.True((await scene.CheckIn(scene.Practised() with { CountReached = true })).StageOpened);

        var next = await scene.Current();
        Assert.Equal((first.Fault, Stage.Half, new LocalDate(2026, 3, 19)), (next.Fault, next.Stage, next.DueOn!.Value));
        var looks = await scene.Looks();
        Assert.Equal([Domain.Measuring.RetestStatus.Cancelled, Domain.Measuring.RetestStatus.Ready], looks.Select(l => l.Status));
        Assert.Equal(next.Id, looks[1].StageId);
        Assert.Equal("gate-opened", (await scene.Messages()).Single(m => m.SubjectId == looks[0].Id).LastProblem);
    }

    [Theory]
    [InlineData(0, "practice-minutes")]
    [InlineData(601, "practice-minutes")]
    [InlineData(null, "practice-minutes")]
    public async Task A_form_without_sensible_minutes_is_refused(int? minutes, string code)
    {
        var scene = await Scene.Approved(fixture.Office);

        var refusals = await scene.Office.Refuses((RecordCheckIn record) => record.From(new CheckInForm { Id = new SeededIds(8).Next(), Minutes = minutes }, scene.Pass));

        Assert.Equal(code, refusals.Single().Code);
    }

    [Fact]
    public async Task A_link_of_another_student_opens_nothing()
    {
        var (one, other) = (await Scene.Approved(fixture.Office), await Scene.Approved(fixture.Office));

        var refusals = await one.Office.Refuses((RecordCheckIn record) => record.From(one.Practised(), new LinkPass(other.Student, one.Plan, Guid.Empty)));

        Assert.Equal("plan-not-found", refusals.Single().Code);
    }
}

public sealed class RecordCheckInOnSqlite(SqliteOffice office) : RecordCheckInTests(office), IClassFixture<SqliteOffice>;

public sealed class RecordCheckInOnPostgreSql(PostgreSqlOffice office) : RecordCheckInTests(office), IClassFixture<PostgreSqlOffice>;

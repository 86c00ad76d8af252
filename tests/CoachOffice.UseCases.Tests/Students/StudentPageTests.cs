using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.SeedDemo.Builders;
using CoachOffice.UseCases.Students;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Students;

public abstract class StudentPageTests(OfficeFixture fixture)
{
    [Fact]
    public async Task A_new_student_needs_a_first_lesson()
    {
        var story = await Story(await fixture.Office.Register(AStudent.Junior("New", "Comer")));

        Assert.Equal((NextStepKind.RecordLesson, "Record the first lesson."), (story.NextStep!.Kind, story.NextStep.Sentence));
        Assert.Equal((true, 12, 0), (story.IsMinor, story.Age, story.Items.Count));
    }

    [Theory]
    [InlineData(PlanStatus.Draft, NextStepKind.ApproveDraft)]
    [InlineData(PlanStatus.Active, NextStepKind.RecordLesson)]
    [InlineData(PlanStatus.OnHold, NextStepKind.ResumePlan)]
    [InlineData(PlanStatus.Completed, NextStepKind.RecordLesson)]
    public async Task The_plans_state_says_what_comes_next(PlanStatus status, NextStepKind next)
    {
        var student = await fixture.Office.Register(AStudent.Named("In", Domain.Terms.Of(status)));
        await fixture.Office.GivePlan(student, status);

        Assert.Equal(next, (await Story(student)).NextStep!.Kind);
    }

    [Theory]
    [InlineData("2026-03-02", NextStepKind.TakeRetest)]
    [InlineData("2026-03-03", NextStepKind.AwaitRetest)]
    public async Task A_retest_of_an_active_plan_is_taken_on_its_day_and_awaited_before(string due, NextStepKind next)
    {
        var student = await fixture.Office.Register(AStudent.Named("Re", $"Test {due}"));
        await AskRetest(await fixture.Office.GivePlan(student), NodaTime.Text.LocalDatePattern.Iso.Parse(due).Value);

        Assert.Equal(next, (await Story(student)).NextStep!.Kind);
    }

    [Fact]
    public async Task Pain_comes_before_everything()
    {
        var student = await fixture.Office.Register(AStudent.Named("Sore", "Wrist"));
        var plan = await fixture.Office.GivePlan(student, PlanStatus.OnHold);
        await fixture.Office.Change(db => Task.FromResult(db.Add(Practised(plan, student) with { Pain = true, PainRegion = Region.LeadWrist })));

        var story = await Story(student);

        Assert.Equal(NextStepKind.SeePainReport, story.NextStep!.Kind);
        Assert.Contains("Pain reported (lead-wrist).", story.Items.Select(i => i.Sentence));
    }

    [Fact]
    public async Task The_story_runs_from_the_newest_to_the_oldest()
    {
        var student = await fixture.Office.Register(AStudent.Named("Long", "Story"));
        var plan = await fixture.Office.GivePlan(student);
        await fixture.Office.Change(db => Task.FromResult(db.Add(Practised(plan, student))));

        var items = (await Story(student)).Items;

        Assert.Equal(
            [StoryKind.CheckIn, StoryKind.Plan, StoryKind.Plan, StoryKind.Lesson],
            items.Select(i => i.Kind));
        Assert.Equal("Lesson with the iron, 0 readings.", items[^1].Sentence);
    }

    [Fact]
    public async Task An_unknown_student_is_not_found()
    {
        var refusals = await fixture.Office.Refuses((StudentPage page) => page.Of(StudentId.From(new SeededIds(77).Next())));

        Assert.Equal("student-not-found", refusals.Single().Code);
    }

    private Task<StudentStory> Story(StudentId id) => fixture.Office.Must((StudentPage page) => page.Of(id));

    private Task AskRetest(PlanId id, LocalDate due) => fixture.Office.Change(async db =>
    {
        var plan = await db.Plans.Include(p => p.Stages).SingleAsync(p => p.Id == id);
        db.Add(Retest.Ask(new SeededIds(id.GetHashCode() + 1).Next(), plan, plan.Stages[0], due, false));
    });

    private CheckIn Practised(PlanId plan, StudentId student) => new()
    {
        Id = new SeededIds(plan.GetHashCode() + 2).Next(),
        PlanId = plan,
        StudentId = student,
        At = fixture.Office.Now + Duration.FromHours(1),
        PracticedOn = new LocalDate(2026, 3, 2),
        Minutes = 20,
    };
}

public sealed class StudentPageOnSqlite(SqliteOffice office) : StudentPageTests(office), IClassFixture<SqliteOffice>;

public sealed class StudentPageOnPostgreSql(PostgreSqlOffice office) : StudentPageTests(office), IClassFixture<PostgreSqlOffice>;

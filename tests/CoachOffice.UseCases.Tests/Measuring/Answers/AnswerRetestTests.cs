using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Measuring;
using CoachOffice.SeedDemo.Builders;
using CoachOffice.UseCases.FollowUps;
using CoachOffice.UseCases.Insight;
using CoachOffice.UseCases.Measuring;
using CoachOffice.UseCases.Measuring.Answers;
using CoachOffice.UseCases.Tests.Fixtures;
using CoachOffice.UseCases.Tests.Plans;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Measuring.Answers;

/// <summary>A student reads the number again and sends it; a coach looks at it, and only then it is judged.</summary>
public abstract class AnswerRetestTests(OfficeFixture fixture)
{
    [Fact]
    public async Task A_reading_sent_ends_the_prompts_waits_for_the_coach_and_is_judged_by_the_coach_alone()
    {
        var scene = await Due();
        var look = (await scene.Looks()).Single();

        await scene.Office.Must((AnswerRetest answer) => answer.From(new RetestAnswer(look.Id, "5 4,5 6", On(10)), scene.Pass));

        Assert.Equal(("5 cm 4.5 cm 6 cm", On(10), RetestStatus.Ready), ((await scene.Looks()).Single().Answer, (await scene.Looks()).Single().AnsweredOn, (await scene.Looks()).Single().Status));
        Assert.DoesNotContain(await scene.Messages(), m => m.Kind == MessageKind.RetestPrompt && m.State == MessageState.Waiting);
        Assert.True((await scene.Office.Do((TodayPage page) => page.For(scene.Office.Coach))).Retests.Single().Answered);
        var view = (await scene.Office.Do((RetestPage page) => page.Of(look.Id)))!;
        var verdict = await scene.Office.Must((RecordRetest record) => record.With(
            new RetestForm { RetestId = look.Id, Version = view.Version, HeldOn = view.AnsweredOn!.Value, Entries = [Scene.Entry(Scene.HeadShift, view.Answer)] }, scene.Office.Coach));
        Assert.Equal(RetestStatus.Completed, (await scene.Looks()).First(l => l.Id == look.Id).Status);
        Assert.NotEmpty(verdict.Sentence);
    }

    [Fact]
    public async Task Two_prompts_without_an_answer_go_to_the_coach_and_a_third_never_goes_out()
    {
        var scene = await Due();
        for (var day = 0; day < 30; day++)
        {
            await scene.Sweep();
            scene.Office.Time.Advance(TimeSpan.FromDays(1));
        }

        Assert.Equal([MessageState.Sent, MessageState.Sent], (await scene.Messages()).Where(m => m.Kind == MessageKind.RetestPrompt).Select(m => m.State));
        var row = (await scene.Office.Do((TodayPage page) => page.For(scene.Office.Coach))).Retests.Single();
        Assert.Equal((2, false), (row.Asked, row.Answered));
    }

    [Fact]
    public async Task The_guardian_of_a_minor_is_asked_once()
    {
        var scene = await Due(AStudent.Junior("Kit", "Marsh"));
        for (var day = 0; day < 20; day++)
        {
            await scene.Sweep();
            scene.Office.Time.Advance(TimeSpan.FromDays(1));
        }

        Assert.Single(await scene.Messages(), m => m.Kind == MessageKind.RetestPrompt);
    }

    [Fact]
    public async Task Not_on_a_lessons_day_not_right_after_practice_not_before_it_is_asked_for_and_no_nonsense()
    {
        var scene = await Due();
        var look = (await scene.Looks()).Single();

        Assert.Equal("answer-day", await Code(scene, look.Id, "5", On(2)));
        Assert.Equal("answer-day", await Code(scene, look.Id, "5", On(30)));
        Assert.Equal("not-a-number", await Code(scene, look.Id, "five", On(10)));
        Assert.Equal("retest-reading", await Code(scene, look.Id, "", On(10)));
        Assert.Equal("outside-limits", await Code(scene, look.Id, "5000", On(10)));
        Assert.Equal("look-not-found", await Code(scene, Guid.Empty, "5", On(10)));
        await scene.CheckIn(scene.Practised(on: On(9)));
        Assert.Contains(await Code(scene, look.Id, "5", On(10)), new[] { "answer-day", "look-not-found" });
    }

    [Fact]
    public async Task Another_students_link_opens_no_look()
    {
        var scene = await Due();
        var look = (await scene.Looks()).Single().Id;
        var other = await Scene.Approved(scene.Office, AStudent.Named("Otto", "Other"));

        Assert.Equal("look-not-found", (await scene.Office.Refuses((AnswerRetest answer) => answer.From(new RetestAnswer(look, "5", On(10)), other.Pass))).Single().Code);
    }

    private static LocalDate On(int day) => new(2026, 3, day);

    private static async Task<string> Code(Scene scene, Guid look, string readings, LocalDate on) =>
        (await scene.Office.Refuses((AnswerRetest answer) => answer.From(new RetestAnswer(look, readings, on), scene.Pass)))[0].Code;

    // The first stage of the scene ends a week after its lesson of 2 March.
    private async Task<Scene> Due(Domain.Students.StudentDetails? details = null)
    {
        var scene = await Scene.Approved(await fixture.Another(opened: true), details);
        await scene.Sweep();
        scene.At(3, 10);
        await scene.Sweep();
        return scene;
    }
}

public sealed class AnswerRetestOnSqlite(SqliteOffice office) : AnswerRetestTests(office), IClassFixture<SqliteOffice>;

public sealed class AnswerRetestOnPostgreSql(PostgreSqlOffice office) : AnswerRetestTests(office), IClassFixture<PostgreSqlOffice>;

using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Insight;
using CoachOffice.UseCases.Measuring;
using CoachOffice.UseCases.Plans;
using CoachOffice.UseCases.Tests.Fixtures;
using CoachOffice.UseCases.Tests.Plans;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Measuring;

public abstract class RecordRetestTests(OfficeFixture fixture)
{
    [Fact]
    public async Task A_number_that_moved_into_range_opens_the_gate_and_is_looked_at_again_one_to_two_weeks_later()
    {
        var scene = await Approved();
        scene.At(3, 9);

        var verdict = await Record(scene, "4 4 4 4 4");

        Assert.Equal((Movement.MovedToward, Standing.InRange, 12d, 3, 4d, 5), (verdict.Movement, verdict.Standing, verdict.Before, verdict.BeforeReadings, verdict.After, verdict.AfterReadings));
        Assert.StartsWith("Head shift on the way down was 12 cm (3 readings) and is 4 cm (5 readings)", verdict.Sentence, StringComparison.Ordinal);
        Assert.Contains("moved toward the wanted range by more than reading error", verdict.Sentence, StringComparison.Ordinal);
        var current = await scene.Current();
        Assert.Equal(Stage.Half, current.Stage);
        var looks = (await scene.Looks()).Where(l => l.Status == RetestStatus.Ready).ToList();
        Assert.Equal(2, looks.Count);
        Assert.Equal(new LocalDate(2026, 3, 19), looks.Single(l => l.IsSecondLook).DueOn);
        Assert.Equal(current.Id, looks.Single(l => !l.IsSecondLook).StageId);
        Assert.Equal("answered", (await scene.Messages()).Single(m => m.Kind == MessageKind.RetestPrompt && m.State == MessageState.Skipped).LastProblem);
        Assert.Single(await scene.Messages(), m => m.Kind == MessageKind.SecondLook && m.State == MessageState.Waiting);
    }

    [Fact]
    public async Task A_number_that_did_not_move_keeps_the_rung_and_is_looked_at_again()
    {
        var scene = await Approved();
        scene.At(3, 9);

        var verdict = await Record(scene, "12 11 12 11 12");

        Assert.Equal((Movement.NoChangeBeyondReadingError, Standing.NotYet), (verdict.Movement, verdict.Standing));
        Assert.Equal(Stage.Rehearse, (await scene.Current()).Stage);
        Assert.True(Assert.Single(await scene.Looks(), l => l.Status == RetestStatus.Ready).IsSecondLook);
    }

    [Fact]
    public async Task Worked_on_long_enough_in_vain_the_next_draft_leaves_the_drills_out()
    {
        var scene = await Approved();
        var drills = (await scene.Current()).Drills.Select(d => d.Drill).ToList();
        var verdict = await WorkedInVain(scene);
        Assert.Contains("next draft leaves them out", verdict.Sentence, StringComparison.Ordinal);

        var view = await NextDraft(scene);

        Assert.All(drills, drill => Assert.Contains(view.Draft.Withheld, w => w.Drill == drill && w.Reason == WithheldReason.TriedInVain));
        Assert.DoesNotContain(view.Stages.SelectMany(s => s.Drills), d => drills.Contains(d.Drill));
    }

    [Fact]
    public async Task What_was_worked_on_in_a_plan_entered_in_error_counts_nowhere()
    {
        var scene = await Approved();
        await WorkedInVain(scene);
        var version = (await scene.Read()).Version;
        await scene.Office.Must((MarkPlanInError mark) => mark.Now(scene.Plan, version, "made for another student", scene.Office.Coach));

        Assert.DoesNotContain((await NextDraft(scene)).Draft.Withheld, w => w.Reason == WithheldReason.TriedInVain);
    }

    [Fact]
    public async Task Too_few_practice_notes_are_not_judged_and_the_drills_stay()
    {
        var scene = await Approved();
        scene.At(3, 18);
        await Record(scene, "12 11 12 11 12");

        Assert.DoesNotContain((await NextDraft(scene)).Draft.Withheld, w => w.Reason == WithheldReason.TriedInVain);
    }

    [Fact]
    public async Task Never_on_a_lessons_day()
    {
        var scene = await Approved();

        Assert.Equal("retest-on-lesson-day", (await Refused(scene, "4 4 4", new LocalDate(2026, 3, 2))).Code);
        scene.At(3, 9);
        await Scene.LessonOf(scene.Office, scene.Student, new LocalDate(2026, 3, 9));
        Assert.Equal("retest-on-lesson-day", (await Refused(scene, "4 4 4", new LocalDate(2026, 3, 9))).Code);
        Assert.Equal("retest-day", (await Refused(scene, "4 4 4", new LocalDate(2026, 3, 10))).Code);
    }

    [Fact]
    public async Task Without_the_number_asked_for_or_with_nonsense_nothing_is_kept()
    {
        var scene = await Approved();
        scene.At(3, 9);

        Assert.Equal("retest-reading", (await Refused(scene, "")).Code);
        Assert.Equal("not-a-number", (await Refused(scene, "about four")).Code);
        Assert.Equal("outside-limits", (await Refused(scene, "400")).Code);
        Assert.Equal(RetestStatus.Ready, (await scene.Looks()).Single().Status);
    }

    [Fact]
    public async Task A_paused_plan_is_not_judged()
    {
        var scene = await Approved();
        scene.At(3, 9);
        await scene.CheckIn(new CheckInForm { Id = new SeededIds(11).Next(), Pain = true });

        Assert.Equal("plan-on-hold", (await Refused(scene, "4 4 4")).Code);
    }

    [Fact]
    public async Task Posted_twice_it_is_judged_once()
    {
        var scene = await Approved();
        scene.At(3, 9);
        var form = await Form(scene, "4 4 4 4 4");

        var outcomes = await Task.WhenAll(Enumerable.Range(0, 3).Select(_ => Task.Run(() => scene.Office.Do((RecordRetest record) => record.With(form, scene.Office.Coach)))));

        Assert.Single(outcomes, o => o.Succeeded);
        Assert.All(outcomes.Where(o => !o.Succeeded), o => Assert.Contains(o.Refusals[0].Code, (string[])[Clash.Code, "retest-over"]));
        Assert.Single(await scene.Looks(), l => l.IsSecondLook);
    }

    [Fact]
    public async Task A_due_retest_stands_on_the_day_and_shows_what_it_is_compared_with()
    {
        var scene = await Approved();
        scene.At(3, 9);
        var look = (await scene.Looks()).Single();

        var today = await scene.Office.Do((TodayPage page) => page.For(scene.Office.Coach));
        var view = (await scene.Office.Do((RetestPage page) => page.Of(look.Id)))!;

        Assert.Equal(look.Id, Assert.Single(today.Retests).Id);
        Assert.Equal((12d, 3, new LocalDate(2026, 3, 2)), (view.Before.Value.Value, view.Before.Readings, view.LessonOn));
        Assert.Equal((-5d, 5d), (view.Range.Low, view.Range.High));
        Assert.Equal(Scene.HeadShift, view.Fields[0].Measure.Id.Value);
        Assert.Equal(12d, view.Fields[0].LastTime);
    }

    private static async Task<KeptVerdict> WorkedInVain(Scene scene)
    {
        for (var day = 3; day <= 15; day += 2)
        {
            scene.At(3, day, 18);
            await scene.CheckIn(scene.Practised());
        }

        scene.At(3, 18);
        return await Record(scene, "12 11 12 11 12");
    }

    private static async Task<DraftView> NextDraft(Scene scene)
    {
        scene.At(3, 20);
        var lesson = await Scene.LessonOf(scene.Office, scene.Student, new LocalDate(2026, 3, 20));
        var next = await scene.Office.Must((DraftPlan draft) => draft.For(lesson, scene.Office.Coach));
        return (await scene.Office.Do((DraftPage page) => page.Of(next)))!;
    }

    private static async Task<RetestForm> Form(Scene scene, string text, LocalDate? on = null)
    {
        var look = (await scene.Looks()).First(l => l.Status == RetestStatus.Ready);
        return new RetestForm { RetestId = look.Id, Version = look.Version, HeldOn = on ?? scene.Office.Now.InUtc().Date, Entries = [Scene.Entry(Scene.HeadShift, text)] };
    }

    private static async Task<KeptVerdict> Record(Scene scene, string text)
    {
        var form = await Form(scene, text);
        return await scene.Office.Must((RecordRetest record) => record.With(form, scene.Office.Coach));
    }

    private static async Task<Domain.Refusal> Refused(Scene scene, string text, LocalDate? on = null)
    {
        var form = await Form(scene, text, on);
        return (await scene.Office.Refuses((RecordRetest record) => record.With(form, scene.Office.Coach))).Single();
    }

    private async Task<Scene> Approved() => await Scene.Approved(await fixture.Another(opened: true));
}

public sealed class RecordRetestOnSqlite(SqliteOffice office) : RecordRetestTests(office), IClassFixture<SqliteOffice>;

public sealed class RecordRetestOnPostgreSql(PostgreSqlOffice office) : RecordRetestTests(office), IClassFixture<PostgreSqlOffice>;

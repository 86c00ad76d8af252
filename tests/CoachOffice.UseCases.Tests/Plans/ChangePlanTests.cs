using CoachOffice.Domain;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.SeedDemo.Builders;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Plans;
using CoachOffice.UseCases.Tests.Fixtures;

namespace CoachOffice.UseCases.Tests.Plans;

public abstract class ChangePlanTests(OfficeFixture fixture)
{
    [Fact]
    public async Task A_changed_count_keeps_the_drafts_own_beside_it_with_the_reason()
    {
        var scene = await Scene.Drafted(fixture.Office);
        var (view, stage, drill) = await First(scene);

        await scene.Office.Must((ChangeDrill change) => change.In(
            Edit(scene, stage.Id) with { Reason = EditReason.NotFeasible, Comment = "little time" }, drill.Drill, Counts(drill) with { Reps = drill.Reps - 2, Cue = "chest stays over the ball" }, scene.Office.Coach));

        var after = (await scene.Office.Do((DraftPage page) => page.Of(scene.Plan)))!;
        Assert.Equal(2, after.Version);
        Assert.Equal((drill.Reps - 2, "chest stays over the ball"), (after.Stages[0].Drills[0].Reps, after.Stages[0].Drills[0].Cue));
        Assert.Equal(view.Draft.Stages[0].Drills[0].Reps, after.Draft.Stages[0].Drills[0].Reps);
        Assert.Equal(
            [($"stage:1/drill:{drill.Drill}/cue", drill.Cue, "chest stays over the ball"), ($"stage:1/drill:{drill.Drill}/reps", $"{drill.Reps}", $"{drill.Reps - 2}")],
            after.Edits.Select(e => (e.What, e.Original, e.Changed)));
        Assert.All(after.Edits, e => Assert.Equal((EditReason.NotFeasible, "little time", "Carl Coach"), (e.Reason, e.Comment, e.By)));
    }

    [Fact]
    public async Task A_drill_of_the_book_takes_anothers_place_with_its_own_words()
    {
        var scene = await Scene.Drafted(fixture.Office);
        var (view, stage, drill) = await First(scene);
        var choice = stage.Choices.First(c => c.Withheld is not (WithheldReason.Limit or WithheldReason.Age));

        await scene.Office.Must((SwapDrill swap) => swap.For(Edit(scene, stage.Id), drill.Drill, choice.Drill, scene.Office.Coach));

        var after = (await scene.Office.Do((DraftPage page) => page.Of(scene.Plan)))!;
        var swapped = after.Stages[0].Drills[0];
        var inBook = view.Book.Find(DrillId.From(choice.Drill))!;
        Assert.Equal((choice.Drill, inBook.Cue, drill.SessionsPerWeek), (swapped.Drill, swapped.Cue, swapped.SessionsPerWeek));
        Assert.Equal(inBook.Steps, swapped.Steps);
        Assert.StartsWith($"{inBook.DoneWhen.Hits} of {inBook.DoneWhen.Of}", after.Stages[0].Gate.Text, StringComparison.Ordinal);
        Assert.Equal((DrillText.Of(drill), DrillText.Of(swapped)), (after.Edits.Single().Original, after.Edits.Single().Changed));
    }

    [Fact]
    public async Task Not_even_the_coach_puts_in_a_drill_that_loads_what_has_a_limit()
    {
        var scene = await Scene.Drafted(fixture.Office, Scene.Adult.WithLimit(Region.LowerBack));
        var (view, stage, drill) = await First(scene);
        var loading = view.Book.Drills.First(d => d.Loads.Any(l => l.Region == Region.LowerBack) && stage.Drills.All(s => s.Drill != d.Id.Value));

        var refusals = await scene.Office.Refuses((SwapDrill swap) => swap.For(Edit(scene, stage.Id), drill.Drill, loading.Id.Value, scene.Office.Coach));

        Assert.Equal("drill-withheld", refusals.Single().Code);
        Assert.Contains("licensed professional", refusals.Single().Sentence, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0, 10, 3, 10, "drill-sets")]
    [InlineData(3, 1000, 3, 10, "drill-reps")]
    [InlineData(3, 10, 8, 10, "drill-sessions")]
    [InlineData(3, 10, 3, 0, "drill-minutes")]
    [InlineData(3, 10, 7, 60, "too-many-minutes")]
    public async Task Counts_that_do_not_fit_a_person_or_the_week_are_refused(int sets, int reps, int sessions, int minutes, string code)
    {
        var scene = await Scene.Drafted(fixture.Office);
        var (_, stage, drill) = await First(scene);
        var counts = new DrillCounts { Sets = sets, Reps = reps, SessionsPerWeek = sessions, MinutesPerSession = minutes, Cue = "slow" };

        var refusals = await scene.Office.Refuses((ChangeDrill change) => change.In(Edit(scene, stage.Id), drill.Drill, counts, scene.Office.Coach));

        Assert.Contains(refusals, r => r.Code == code);
        Assert.Empty((await scene.Office.Do((DraftPage page) => page.Of(scene.Plan)))!.Edits);
    }

    [Fact]
    public async Task The_order_can_change_until_the_plan_is_approved()
    {
        var scene = await Scene.Drafted(fixture.Office);
        var (view, stage, _) = await First(scene);
        var order = view.Stages.Select(s => s.Id).Reverse().ToList();

        await scene.Office.Must((ReorderStages reorder) => reorder.As(Edit(scene, stage.Id), order, scene.Office.Coach));
        var after = (await scene.Office.Do((DraftPage page) => page.Of(scene.Plan)))!;
        Assert.Equal(order, after.Stages.Select(s => s.Id));
        Assert.Equal("order", after.Edits.Single().What);

        Assert.Equal("stage-order", (await scene.Office.Refuses((ReorderStages r) => r.As(Edit(scene, stage.Id) with { Version = 2 }, order.Take(1).ToList(), scene.Office.Coach))).Single().Code);
        await scene.Office.Must((ApprovePlan approve) => approve.Now(scene.Plan, 2, scene.Office.Coach));
        Assert.Equal("plan-not-draft", (await scene.Office.Refuses((ReorderStages r) => r.As(Edit(scene, stage.Id) with { Version = 3 }, order, scene.Office.Coach))).Single().Code);
    }

    [Fact]
    public async Task The_second_of_two_coaches_on_one_draft_is_told_and_overwrites_nothing()
    {
        var scene = await Scene.Drafted(fixture.Office);
        var (_, stage, drill) = await First(scene);
        scene.Office.Time.Advance(TimeSpan.FromMinutes(1));
        await scene.Office.Must((WritePlanMessage write) => write.On(scene.Plan, 1, "Well done today.", scene.Office.Owner));

        var refusals = await scene.Office.Refuses((ChangeDrill change) => change.In(Edit(scene, stage.Id), drill.Drill, Counts(drill) with { Reps = 5 }, scene.Office.Coach));

        Assert.Equal(Clash.Code, refusals.Single().Code);
        Assert.Contains("Olive Owner", refusals.Single().Sentence, StringComparison.Ordinal);
        Assert.Equal("Well done today.", (await scene.Read()).Message);
    }

    [Fact]
    public async Task A_stage_keeps_at_least_one_drill_and_a_finished_one_stays_as_it_was()
    {
        var scene = await Scene.Approved(fixture.Office);
        var (_, stage, drill) = await First(scene);
        if (stage.Drills.Count == 1)
            Assert.Equal("last-drill", (await scene.Office.Refuses((RemoveDrill remove) => remove.From(Edit(scene, stage.Id) with { Version = 2 }, drill.Drill, scene.Office.Coach))).Single().Code);
        await scene.Office.Must((PassGate pass) => pass.For(scene.Plan, 2, stage.Id, "seen on the range", scene.Office.Coach));

        var refusals = await scene.Office.Refuses((ChangeDrill change) => change.In(Edit(scene, stage.Id) with { Version = 3 }, drill.Drill, Counts(drill), scene.Office.Coach));

        Assert.Equal("stage-over", refusals.Single().Code);
    }

    [Fact]
    public async Task Passing_gate_after_gate_completes_the_plan()
    {
        var scene = await Scene.Approved(await fixture.Another(opened: true));
        for (var version = 2; (await scene.Read()).Status == PlanStatus.Active; version++)
        {
            var current = await scene.Current();
            var shown = version;
            await scene.Office.Must((PassGate pass) => pass.For(scene.Plan, shown, current.Id, "seen on the range", scene.Office.Coach));
        }

        var plan = await scene.Read();
        Assert.Equal((PlanStatus.Completed, "last-gate-opened"), (plan.Status, plan.Changes.Single(c => c.To == PlanStatus.Completed).Reason));
        Assert.All(plan.Stages, s => Assert.Equal(StageStatus.Done, s.Status));
        Assert.DoesNotContain(await scene.Looks(), l => l.Status == Domain.Measuring.RetestStatus.Ready);
        Assert.Null((await scene.Office.Do((PlanSheet sheet) => sheet.For(scene.Plan)))!.LookOn);
    }

    [Fact]
    public async Task Drafting_again_takes_the_place_of_a_draft_nobody_approved()
    {
        var scene = await Scene.Drafted(fixture.Office);

        var again = await scene.Office.Must((DraftPlan draft) => draft.For(scene.Lesson, scene.Office.Coach));

        Assert.NotEqual(scene.Plan, again);
        Assert.Equal((PlanStatus.Revoked, "drafted-again"), ((await scene.Read()).Status, (await scene.Read()).Changes.Single().Reason));
        Assert.Null(await scene.Office.Do((PlanSheet sheet) => sheet.For(again)));
    }

    private static async Task<(DraftView View, StageView Stage, PlanDrill Drill)> First(Scene scene)
    {
        var view = (await scene.Office.Do((DraftPage page) => page.Of(scene.Plan)))!;
        return (view, view.Stages[0], view.Stages[0].Drills[0]);
    }

    private static EditOf Edit(Scene scene, Guid stage) => new() { Plan = scene.Plan, Version = 1, StageId = stage, Reason = EditReason.DoubtIt };

    private static DrillCounts Counts(PlanDrill drill) =>
        new() { Sets = drill.Sets, Reps = drill.Reps, SessionsPerWeek = drill.SessionsPerWeek, MinutesPerSession = drill.MinutesPerSession, Cue = drill.Cue };
}

public sealed class ChangePlanOnSqlite(SqliteOffice office) : ChangePlanTests(office), IClassFixture<SqliteOffice>;

public sealed class ChangePlanOnPostgreSql(PostgreSqlOffice office) : ChangePlanTests(office), IClassFixture<PostgreSqlOffice>;

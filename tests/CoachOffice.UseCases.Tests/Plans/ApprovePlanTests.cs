using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.SeedDemo.Builders;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Plans;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Plans;

public abstract class ApprovePlanTests(OfficeFixture fixture)
{
    [Fact]
    public async Task One_approval_brings_the_stage_its_retest_and_three_messages()
    {
        var scene = await Scene.Approved(await fixture.Another(opened: true));

        var plan = await scene.Read();
        var stage = Assert.Single(plan.Stages, s => s.Status == StageStatus.Current);
        Assert.Equal((PlanStatus.Active, "Carl Coach", Stage.Rehearse), (plan.Status, plan.ApprovedBy, stage.Stage));
        Assert.Equal(("downswing-head-shift.high", new LocalDate(2026, 3, 9)), (stage.Fault, stage.DueOn));
        var look = Assert.Single(await scene.Looks());
        Assert.Equal((stage.Id, new LocalDate(2026, 3, 9), RetestStatus.Ready), (look.StageId, look.DueOn, look.Status));
        var messages = await scene.Messages();
        Assert.Equal([MessageKind.PlanDelivery, MessageKind.PracticeNudge, MessageKind.RetestPrompt], messages.Select(m => m.Kind));
        Assert.Equal([Instant.FromUtc(2026, 3, 2, 9, 0), Instant.FromUtc(2026, 3, 6, 9, 0), Instant.FromUtc(2026, 3, 9, 9, 0)], messages.Select(m => m.DueAt));
        Assert.True(messages[0].AtOnce);
    }

    [Fact]
    public async Task Two_coaches_who_approve_at_the_same_moment_approve_once()
    {
        var scene = await Scene.Drafted(await fixture.Another(opened: true));

        var outcomes = await Task.WhenAll(Enumerable.Range(0, 4).Select(_ => Task.Run(() => scene.Office.Do((ApprovePlan approve) => approve.Now(scene.Plan, 1, scene.Office.Coach)))));

        Assert.Single(outcomes, o => o.Succeeded);
        Assert.All(outcomes.Where(o => !o.Succeeded), o => Assert.Equal(Clash.Code, o.Refusals[0].Code));
        Assert.Equal(3, (await scene.Messages()).Count);
        Assert.Single(await scene.Looks());
    }

    [Fact]
    public async Task The_desk_may_not_approve()
    {
        var scene = await Scene.Drafted(fixture.Office);

        var refusals = await scene.Office.Refuses((ApprovePlan approve) => approve.Now(scene.Plan, 1, scene.Office.Desk));

        Assert.Equal(NotAllowed.Code, refusals.Single().Code);
        Assert.Equal(PlanStatus.Draft, (await scene.Read()).Status);
        Assert.Empty(await scene.Messages());
    }

    [Fact]
    public async Task A_limit_recorded_after_the_draft_stands_against_it()
    {
        var scene = await Scene.Drafted(fixture.Office);
        await scene.Office.Must((UseCases.Students.ChangeStudent change) =>
            change.To(scene.Student, 1, Scene.Adult.WithLimit(Domain.Students.Region.LowerBack), scene.Office.Coach));

        var refusals = await scene.Office.Refuses((ApprovePlan approve) => approve.Now(scene.Plan, 1, scene.Office.Coach));

        Assert.Equal("limits-changed", refusals.Single().Code);
        var view = await scene.Office.Do((DraftPage page) => page.Of(scene.Plan));
        Assert.Equal("limits-changed", view!.Obstacles.Single().Code);
    }

    [Fact]
    public async Task A_new_plan_takes_the_place_of_the_running_one_and_of_its_messages()
    {
        var scene = await Scene.Approved(await fixture.Another(opened: true));
        scene.At(3, 4);
        var lesson = await Scene.LessonOf(scene.Office, scene.Student, new LocalDate(2026, 3, 4));
        var next = await scene.Office.Must((DraftPlan draft) => draft.For(lesson, scene.Office.Coach));

        await scene.Office.Must((ApprovePlan approve) => approve.Now(next, 1, scene.Office.Coach));

        var old = await scene.Read();
        Assert.Equal((PlanStatus.Revoked, "replaced-by-newer-plan"), (old.Status, old.Changes.OrderBy(c => c.At).Last().Reason));
        Assert.All(await scene.Messages(), m => Assert.Equal(MessageState.Skipped, m.State));
        Assert.All(await scene.Looks(), l => Assert.Equal(RetestStatus.Cancelled, l.Status));
        Assert.Equal(3, await scene.Office.Read(db => db.Messages.CountAsync(m => m.PlanId == next && m.State == MessageState.Waiting)));
    }

    [Fact]
    public async Task A_juniors_plan_brings_no_note_only_delivery_and_retest_for_the_guardian()
    {
        var scene = await Scene.Approved(await fixture.Another(opened: true), AStudent.Junior("Kit", "Marsh"));

        Assert.Equal([MessageKind.PlanDelivery, MessageKind.RetestPrompt], (await scene.Messages()).Select(m => m.Kind));
    }
}

public sealed class ApprovePlanOnSqlite(SqliteOffice office) : ApprovePlanTests(office), IClassFixture<SqliteOffice>;

public sealed class ApprovePlanOnPostgreSql(PostgreSqlOffice office) : ApprovePlanTests(office), IClassFixture<PostgreSqlOffice>;

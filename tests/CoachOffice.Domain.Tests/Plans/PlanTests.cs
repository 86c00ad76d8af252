using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.Domain.Tests.Plans;

public sealed class PlanTests
{
    private static readonly Instant Now = Instant.FromUtc(2026, 5, 4, 10, 0);

    private static readonly StoredDraft Draft = new()
    {
        Id = DraftId.From(FixedIds.Of(50)),
        LessonId = LessonId.From(FixedIds.Of(51)),
        StudentId = StudentId.From(FixedIds.Of(52)),
        Json = "{}",
        InputJson = "{}",
        InputSha256 = "",
        RulebookSha256 = "",
        Engine = "drafter/1",
        MadeAt = Now,
        MadeBy = AccountId.From(FixedIds.Of(53)),
    };

    [Fact]
    public void A_proposed_plan_holds_the_rungs_of_its_draft_in_order()
    {
        var plan = Proposed();
        Assert.Equal((PlanId.From(FixedIds.Of(60)), Draft.Id, Draft.LessonId, Draft.StudentId, Now), (plan.Id, plan.DraftId, plan.LessonId, plan.StudentId, plan.CreatedAt));
        Assert.Equal((PlanStatus.Draft, null, null), (plan.Status, plan.ApprovedAt, plan.ApprovedBy));
        Assert.Equal([(1, Stage.Rehearse), (2, Stage.Half), (3, Stage.Full)], plan.Stages.Select(s => (s.Order, s.Stage)));
        Assert.All(plan.Stages, s => Assert.Equal(plan.Id, s.PlanId));
        Assert.Equal([FixedIds.Of(1), FixedIds.Of(2), FixedIds.Of(3)], plan.Stages.Select(s => s.Id));
    }

    // The states of HL7 FHIR R5 (CarePlan.status); which steps a practice needs is our own judgement.
    [Theory]
    [InlineData(PlanStatus.Draft, "active revoked entered-in-error")]
    [InlineData(PlanStatus.Active, "on-hold completed revoked entered-in-error")]
    [InlineData(PlanStatus.OnHold, "active revoked entered-in-error")]
    [InlineData(PlanStatus.Completed, "entered-in-error")]
    [InlineData(PlanStatus.Revoked, "entered-in-error")]
    [InlineData(PlanStatus.EnteredInError, "")]
    public void Each_state_leads_where_the_table_says_and_nowhere_else(PlanStatus from, string to)
    {
        var allowed = to.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(Terms.Parse<PlanStatus>).ToHashSet();
        foreach (var next in Enum.GetValues<PlanStatus>())
        {
            var plan = In(from);
            Assert.Equal(allowed.Contains(next), plan.MayBecome(next));
            if (plan.MayBecome(next)) plan.Become(next, Step(9));
            else Assert.Throws<InvalidOperationException>(() => plan.Become(next, Step(9)));
            Assert.Equal(allowed.Contains(next) ? next : from, plan.Status);
        }
    }

    [Fact]
    public void Each_step_is_kept_with_who_when_and_why()
    {
        var plan = In(PlanStatus.Active);
        plan.Become(PlanStatus.OnHold, new PlanStep(FixedIds.Of(7), Now, "Ida Feld", "pain-report"));
        Assert.Equal(
            new PlanChange { Id = FixedIds.Of(7), PlanId = plan.Id, From = PlanStatus.Active, To = PlanStatus.OnHold, Reason = "pain-report", At = Now, By = "Ida Feld" },
            plan.Changes[^1]);
        Assert.Equal(2, plan.Changes.Count);
    }

    [Fact]
    public void The_first_yes_is_the_approval_and_going_on_after_a_pause_is_not()
    {
        var plan = Proposed();
        plan.Become(PlanStatus.Active, new PlanStep(FixedIds.Of(1), Now, "Ida Feld", "approved"));
        plan.Become(PlanStatus.OnHold, new PlanStep(FixedIds.Of(2), Now + Duration.FromDays(1), "the student", "pain-report"));
        Assert.Equal("pain-report", plan.HoldReason);
        plan.Become(PlanStatus.Active, new PlanStep(FixedIds.Of(3), Now + Duration.FromDays(9), "Otto Lind", "asked"));
        Assert.Equal((Now, "Ida Feld", null), (plan.ApprovedAt!.Value, plan.ApprovedBy, plan.HoldReason));
    }

    [Fact]
    public void A_plan_never_approved_has_no_approval()
    {
        var plan = In(PlanStatus.Revoked);
        Assert.Equal((null, null), (plan.ApprovedAt, plan.ApprovedBy));
    }

    [Fact]
    public void Words_are_kept_without_spaces_around()
    {
        var plan = Proposed();
        plan.Write(" Take your time. ");
        plan.Promise(" If it is Monday, then I go to the range. ");
        plan.RestartOn(new LocalDate(2026, 6, 1));
        Assert.Equal(("Take your time.", "If it is Monday, then I go to the range.", new LocalDate(2026, 6, 1)), (plan.Message, plan.IfThen, plan.RestartsOn!.Value));
    }

    [Fact]
    public void The_coach_may_put_the_rungs_into_another_order()
    {
        var plan = Proposed();
        plan.Reorder([FixedIds.Of(3), FixedIds.Of(1), FixedIds.Of(2)]);
        Assert.Equal([(1, Stage.Full), (2, Stage.Rehearse), (3, Stage.Half)], plan.Stages.Select(s => (s.Order, s.Stage)));
    }

    [Fact]
    public void An_order_names_every_rung()
    {
        var plan = Proposed();
        Assert.Throws<ArgumentException>(() => plan.Reorder([FixedIds.Of(3), FixedIds.Of(1)]));
        Assert.Throws<ArgumentException>(() => plan.Reorder([FixedIds.Of(3), FixedIds.Of(1), FixedIds.Of(2), FixedIds.Of(4)]));
        Assert.Equal([1, 2, 3], plan.Stages.Select(s => s.Order));
    }

    internal static Plan Proposed() => Plan.Propose(PlanId.From(FixedIds.Of(60)), Draft, [Rung(Stage.Rehearse), Rung(Stage.Half), Rung(Stage.Full)], new FixedIds());

    private static Plan In(PlanStatus status)
    {
        var plan = Proposed();
        if (status is PlanStatus.OnHold or PlanStatus.Completed) plan.Become(PlanStatus.Active, Step(1));
        if (status != PlanStatus.Draft) plan.Become(status, Step(2));
        return plan;
    }

    private static PlanStep Step(int id) => new(FixedIds.Of(id), Now, "Ida Feld", "asked");

    private static StageContent Rung(Stage stage) => new(FaultId.Parse("impact-spine-tilt.low"), stage, [], new PlanGate { Kind = GateKind.Coach, Text = "When it looks right." });
}

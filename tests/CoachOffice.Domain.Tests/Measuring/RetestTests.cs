using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Tests.Plans;
using NodaTime;

namespace CoachOffice.Domain.Tests.Measuring;

public sealed class RetestTests
{
    private static readonly LocalDate Day = new(2026, 5, 11);
    private static readonly Instant Now = Instant.FromUtc(2026, 5, 11, 10, 0);

    private static readonly KeptVerdict Verdict = new()
    {
        Movement = Movement.MovedToward,
        Standing = Standing.InRange,
        Before = 14,
        BeforeReadings = 3,
        After = 22,
        AfterReadings = 3,
        SmallestRealChange = 5.77,
        Sentence = "It moved.",
    };

    [Fact]
    public void It_asks_for_the_fault_of_a_rung()
    {
        var (retest, plan) = Asked();
        var rung = plan.Stages[1];
        Assert.Equal((FixedIds.Of(5), plan.Id, plan.StudentId, rung.Id, "impact-spine-tilt.low"), (retest.Id, retest.PlanId, retest.StudentId, retest.StageId, retest.Fault));
        Assert.Equal((Day, true, RetestStatus.Ready, null, null), (retest.DueOn, retest.IsSecondLook, retest.Status, retest.Verdict, retest.EndedAt));
    }

    [Fact]
    public void It_is_put_off_begun_and_judged()
    {
        var (retest, _) = Asked();
        retest.MoveTo(Day.PlusDays(2));
        retest.Begin(LessonId.From(FixedIds.Of(8)));
        Assert.Equal((Day.PlusDays(2), RetestStatus.InProgress, LessonId.From(FixedIds.Of(8))), (retest.DueOn, retest.Status, retest.LessonId!.Value));
        retest.Judge(Verdict, Now);
        Assert.Equal((RetestStatus.Completed, Verdict, Now), (retest.Status, retest.Verdict, retest.EndedAt!.Value));
    }

    [Fact]
    public void Or_it_is_not_wanted_any_more()
    {
        var (retest, _) = Asked();
        retest.Cancel(Now);
        Assert.Equal((RetestStatus.Cancelled, null, Now), (retest.Status, retest.Verdict, retest.EndedAt!.Value));
    }

    private static (Retest Retest, Domain.Plans.Plan Plan) Asked()
    {
        var plan = PlanTests.Proposed();
        return (Retest.Ask(FixedIds.Of(5), plan, plan.Stages[1], Day, isSecondLook: true), plan);
    }
}

using CoachOffice.Domain;
using CoachOffice.Domain.Plans;
using CoachOffice.UseCases.Plans;
using NodaTime;

namespace CoachOffice.SeedDemo.Year;

/// <summary>What a coach does with a plan that is out.</summary>
internal sealed class PlanHappenings(Scene scene)
{
    private const int RestAfterPause = 2;

    public Task Pause(StudentLife life, CancellationToken stop) =>
        With<PausePlan>(life, PlanStatus.OnHold, (pause, plan) => pause.Now(plan.Id, plan.Version, "Three weeks away from home.", life.Coach, stop), stop);

    public Task Resume(StudentLife life, LocalDate day, CancellationToken stop) => With<ResumePlan>(
        life, PlanStatus.Active, (resume, plan) => resume.On(plan.Id, plan.Version, day.PlusDays(RestAfterPause), "Talked on the phone, starts again slowly.", life.Coach, stop), stop);

    public Task Complete(StudentLife life, CancellationToken stop) =>
        With<CompletePlan>(life, PlanStatus.Completed, (complete, plan) => complete.Now(plan.Id, plan.Version, "Holds on the course, that was the aim.", life.Coach, stop), stop);

    public Task Revoke(StudentLife life, CancellationToken stop) =>
        With<RevokePlan>(life, PlanStatus.Revoked, (revoke, plan) => revoke.Now(plan.Id, plan.Version, "Season is over, we start anew in spring.", life.Coach, stop), stop);

    public Task EnterInError(StudentLife life, CancellationToken stop) =>
        With<MarkPlanInError>(life, PlanStatus.EnteredInError, (mark, plan) => mark.Now(plan.Id, plan.Version, "Readings of another student were typed in.", life.Coach, stop), stop);

    public async Task PassGate(StudentLife life, CancellationToken stop)
    {
        if (life.Plan is not { } id) return;
        var plan = await scene.Plan(id, stop);
        if (plan.Stages.FirstOrDefault(s => s.Status == StageStatus.Current) is not { } stage) return;
        await scene.Office.Must((PassGate pass) => pass.For(plan.Id, plan.Version, stage.Id, "Seen on the range, ready for the next one.", life.Coach, stop));
    }

    // A plan may have ended by itself before its day came.
    private async Task With<TDeed>(StudentLife life, PlanStatus next, Func<TDeed, Plan, Task<Outcome<PlanId>>> act, CancellationToken stop)
        where TDeed : notnull
    {
        if (life.Plan is not { } id) return;
        var plan = await scene.Plan(id, stop);
        if (plan.MayBecome(next)) await scene.Office.Must((TDeed deed) => act(deed, plan));
    }
}

using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Plans;
using CoachOffice.UseCases.Plans;
using CoachOffice.Web.Shell.Wording;

namespace CoachOffice.Web.Features.Plans;

/// <summary>The steps of a plan's life.</summary>
internal sealed class StateVerbs(ApprovePlan approve, PausePlan pause, ResumePlan resume, CompletePlan complete, EndPlanVerbs end)
{
    public PlanVerb? Named(string? step) => step switch
    {
        "approve" => new("Approved. The plan is on its way and the first day to look again is set.", Approve),
        "pause" => new("Paused. Nothing goes out until you resume it.", async (plan, post, actor) => (await pause.Now(plan, post.Version, post.Because ?? "", actor)).Refusals),
        "resume" => new("Resumed. The days to look again have moved with the pause.", Resume),
        "complete" => new("Completed.", async (plan, post, actor) => (await complete.Now(plan, post.Version, post.Because ?? "", actor)).Refusals),
        _ => end.Named(step),
    };

    private async Task<IReadOnlyList<Refusal>> Approve(PlanId plan, PlanPost post, Actor actor) => (await approve.Now(plan, post.Version, actor)).Refusals;

    private async Task<IReadOnlyList<Refusal>> Resume(PlanId plan, PlanPost post, Actor actor) =>
        DayEntry.Read(post.RestartsOn) is { } day
            ? (await resume.On(plan, post.Version, day, post.Because ?? "", actor)).Refusals
            : [DayEntry.Refusal(nameof(PlanPost.RestartsOn))];
}

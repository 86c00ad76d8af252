using CoachOffice.UseCases.Plans;

namespace CoachOffice.Web.Features.Plans;

/// <summary>The steps no plan comes back from: withdrawn, or never meant to be.</summary>
internal sealed class EndPlanVerbs(RevokePlan revoke, MarkPlanInError inError)
{
    public PlanVerb? Named(string? step) => step switch
    {
        "revoke" => new("Withdrawn. The student's page is closed.", async (plan, post, actor) => (await revoke.Now(plan, post.Version, post.Because ?? "", actor)).Refusals),
        "error" => new("Marked as entered in error. It stays readable here and counts nowhere.", async (plan, post, actor) => (await inError.Now(plan, post.Version, post.Because ?? "", actor)).Refusals),
        _ => null,
    };
}

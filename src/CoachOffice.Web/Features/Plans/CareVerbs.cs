using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Plans;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Plans;

namespace CoachOffice.Web.Features.Plans;

/// <summary>What a coach does while a plan is in the student's hand.</summary>
internal sealed class CareVerbs(PassGate pass, SeePainReport see, RevokeLinks revoke)
{
    public PlanVerb? Named(string? step) => step switch
    {
        "gate" => new("The next stage has begun.", async (plan, post, actor) => (await pass.For(plan, post.Version, post.StageId, post.Because ?? "", actor)).Refusals),
        "seen" => new("Noted that you have dealt with it. The plan stays paused until you resume it.", async (_, post, actor) => (await see.Done(post.CheckIn, actor)).Refusals),
        "links" => new("Every private link of this plan is closed.", Close),
        _ => null,
    };

    private async Task<IReadOnlyList<Refusal>> Close(PlanId plan, PlanPost post, Actor actor) => (await revoke.Of(plan, actor)).Refusals;
}

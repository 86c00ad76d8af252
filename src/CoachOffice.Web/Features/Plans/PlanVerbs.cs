namespace CoachOffice.Web.Features.Plans;

/// <summary>Everything the plan's page can do, by the word its forms post.</summary>
internal sealed class PlanVerbs(DrillVerbs drills, StateVerbs states, CareVerbs care)
{
    public PlanVerb? Named(string? step) => drills.Named(step) ?? states.Named(step) ?? care.Named(step);
}

using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;

namespace CoachOffice.Drafting.Coverage;

/// <summary>What one student gets for one fault: the stages with drills, and for each stage without any the reason and the caution that says what to do instead.</summary>
/// <param name="Fault">The fault worked on.</param>
/// <param name="Student">For whom.</param>
/// <param name="Offered">The stages with at least one drill.</param>
/// <param name="Missing">The stages without, each with its reason; null where the rulebook names none.</param>
/// <param name="Instead">The cautions of the plan that say what to do instead, by id.</param>
public sealed record CoveredWork(FaultId Fault, CoveredStudent Student, IReadOnlyList<Stage> Offered, IReadOnlyDictionary<Stage, WithheldReason?> Missing, IReadOnlyList<string> Instead)
{
    /// <summary>A stage is missing and the plan gives no reason, or does not say what to do instead.</summary>
    public bool IsHole => Missing.Values.Any(reason => reason is null) || (Missing.Count > 0 && Instead.Count == 0);
}

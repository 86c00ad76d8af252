using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;

namespace CoachOffice.Drafting.Drills;

/// <summary>The drills for one fault that fit the student's body, room, kit and week, and those that do not.</summary>
/// <param name="Rungs">In the order of stages; none when nothing is usable.</param>
/// <param name="Withheld">Not offered, with the reason.</param>
/// <param name="Missed">Stages for which nothing is left.</param>
internal sealed record Ladder(IReadOnlyList<LadderRung> Rungs, IReadOnlyList<DraftWithheld> Withheld, IReadOnlyList<MissedRung> Missed)
{
    /// <summary>At least one drill for the fault itself can be done; mixing and playing alone change nothing.</summary>
    public bool IsUsable => Rungs.Any(r => r.Stage < Stage.Mix);
}

using CoachOffice.Domain.Plans.Drafts;

namespace CoachOffice.Drafting.Drills;

/// <summary>The drills for one fault that fit the student's body, room, kit and week, and those that do not.</summary>
/// <param name="Rungs">In the order of stages; none when nothing is usable.</param>
/// <param name="Withheld">Not offered, with the reason.</param>
internal sealed record Ladder(IReadOnlyList<LadderRung> Rungs, IReadOnlyList<DraftWithheld> Withheld)
{
    /// <summary>At least one drill can be done.</summary>
    public bool IsUsable => Rungs.Count > 0;
}

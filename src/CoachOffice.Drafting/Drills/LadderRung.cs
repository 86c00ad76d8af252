using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;

namespace CoachOffice.Drafting.Drills;

/// <summary>One stage of a ladder as it fits this student: the drills with their counts, and the drill whose count opens the next stage.</summary>
internal sealed record LadderRung(Stage Stage, IReadOnlyList<DraftDrill> Drills, Drill First);

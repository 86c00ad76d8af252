namespace CoachOffice.Domain.Plans;

/// <summary>One stage of a progression with its drills, best first; the drafter takes the ones the student can do.</summary>
public sealed record Rung(Stage Stage, IReadOnlyList<DrillId> Drills);

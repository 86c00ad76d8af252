using CoachOffice.Drafting.Drills;

namespace CoachOffice.Drafting.Ordering;

/// <summary>A fault that would have been worked on, had this student a drill for it.</summary>
/// <param name="Candidate">The fault.</param>
/// <param name="Ladder">What was looked at, and why none of it was left.</param>
internal sealed record Skipped(Candidate Candidate, Ladder Ladder);

using CoachOffice.Domain.Measuring;
using CoachOffice.Drafting.Drills;

namespace CoachOffice.Drafting.Ordering;

/// <summary>A chosen fault with its ladder of drills.</summary>
/// <param name="Candidate">The fault.</param>
/// <param name="Ladder">The drills that fit student and week.</param>
/// <param name="After">Faults worked on in this plan that come before it.</param>
internal sealed record Focus(Candidate Candidate, Ladder Ladder, IReadOnlyList<FaultId> After);

using CoachOffice.Domain.Plans.Drafts;

namespace CoachOffice.Drafting.Ordering;

/// <summary>A lesson's faults, sorted into those that may become a focus and those left for later.</summary>
/// <param name="Candidates">By row of the measure.</param>
/// <param name="Undecided">Consequences of near-misses whose only missing facts are unread; considered when no candidate is left.</param>
/// <param name="Parked">The rest, with reasons, by row.</param>
internal sealed record Sorted(IReadOnlyList<Candidate> Candidates, IReadOnlyList<Candidate> Undecided, IReadOnlyList<DraftParked> Parked);

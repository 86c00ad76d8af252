using CoachOffice.Domain.Plans.Drafts;

namespace CoachOffice.Drafting.Ordering;

/// <summary>What is worked on and what of the candidates waits.</summary>
/// <param name="Focuses">None, one or two.</param>
/// <param name="Parked">The other candidates in their order.</param>
/// <param name="Withheld">Drills that were looked at and not offered, in the order they came up.</param>
/// <param name="Skipped">Those parked because no drill was left.</param>
internal sealed record Picked(IReadOnlyList<Focus> Focuses, IReadOnlyList<DraftParked> Parked, IReadOnlyList<DraftWithheld> Withheld, IReadOnlyList<Skipped> Skipped)
{
    /// <summary>Both, the second after the first.</summary>
    public Picked And(Picked last) => new([.. Focuses, .. last.Focuses], [.. Parked, .. last.Parked], [.. Withheld, .. last.Withheld], [.. Skipped, .. last.Skipped]);
}

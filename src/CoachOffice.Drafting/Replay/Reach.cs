namespace CoachOffice.Drafting.Replay;

/// <summary>The lessons an edit may reach, in terms a database can answer: no lesson outside of it is drafted otherwise.</summary>
/// <param name="Whole">Why every lesson must be looked at; none when <paramref name="Values"/> say which.</param>
/// <param name="Values">A lesson is reached when any of them holds for a reading ever taken in it; ordered by measure, then club.</param>
public sealed record Reach(IReadOnlyList<WholeReason> Whole, IReadOnlyList<ReachedValues> Values)
{
    /// <summary>No lesson is reached.</summary>
    public bool IsNothing => Whole.Count + Values.Count == 0;
}

using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Replay;

/// <summary>What may make one lesson's drafts differ, known before any draft is made.</summary>
/// <param name="IsGradedElse">A finding has another side or grade.</param>
/// <param name="IsOpen">Both drafts must be made to tell.</param>
/// <param name="Ladders">Faults out whose ladder differs: it matters only where it is climbed.</param>
/// <param name="Shifted">Faults out whose distance, range or error differs: it matters only in the running for the work.</param>
internal sealed record Suspicion(bool IsGradedElse, bool IsOpen, IReadOnlySet<FaultId> Ladders, IReadOnlySet<FaultId> Shifted)
{
    public bool IsNone => !IsOpen && Ladders.Count + Shifted.Count == 0;
}

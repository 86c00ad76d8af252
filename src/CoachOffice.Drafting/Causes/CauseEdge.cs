using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Causes;

/// <summary>One fault behind another, as a pattern claims.</summary>
internal sealed record CauseEdge(FaultId From, FaultId To, Pattern By)
{
    /// <summary>As in the trace.</summary>
    public override string ToString() => $"{From} -> {To} by {By.Id.Value}";
}

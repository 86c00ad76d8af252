using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Ordering;

/// <summary>A fault that may become a focus.</summary>
/// <param name="Fault">The fault.</param>
/// <param name="Finding">Its finding.</param>
/// <param name="Pattern">The first standing pattern it is the root of, or null.</param>
/// <param name="Reach">Itself and everything it leads to.</param>
/// <param name="IsProvisional">True when only unread facts keep it from being explained.</param>
internal sealed record Candidate(FaultId Fault, Finding Finding, Pattern? Pattern, IReadOnlyList<FaultId> Reach, bool IsProvisional = false);

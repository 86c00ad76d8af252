using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Causes;

/// <summary>A pattern that fired, with its root and the consequences that are out in this lesson.</summary>
/// <param name="Pattern">The pattern.</param>
/// <param name="Root">The first of its roots that is out.</param>
/// <param name="Explained">Its consequences that are out, without the root, ordinal.</param>
internal sealed record StandingPattern(Pattern Pattern, FaultId Root, IReadOnlyList<FaultId> Explained)
{
    /// <summary>Two patterns rival each other when they claim the same root or a consequence in common; different links of one chain do not.</summary>
    public bool Rivals(StandingPattern other) => Root == other.Root || Explained.Intersect(other.Explained).Any();
}

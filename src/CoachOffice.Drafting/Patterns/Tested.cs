using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Patterns;

/// <summary>One condition held against a lesson.</summary>
/// <param name="Condition">The condition.</param>
/// <param name="Truth">What it says.</param>
/// <param name="Matched">The findings out of range that make it true.</param>
/// <param name="Missing">The measures it would need to say yes or no.</param>
public sealed record Tested(Condition Condition, Truth Truth, IReadOnlyList<Finding> Matched, IReadOnlyList<MeasureId> Missing);

using CoachOffice.Domain.Measuring;

namespace CoachOffice.Domain.Plans;

/// <summary>The measure is out of range: <c>impact-spine-tilt.low</c>, <c>tempo-ratio.high at least moderate</c>, or on either side <c>club-path.out</c>.</summary>
/// <param name="Measure">The measure.</param>
/// <param name="Side">Low, High, or None for either side.</param>
/// <param name="AtLeast">Mild unless the rule says more.</param>
public sealed record OutCondition(MeasureId Measure, Side Side, Grade AtLeast = Grade.Mild) : Condition;

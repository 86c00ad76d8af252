using CoachOffice.Domain.Measuring;

namespace CoachOffice.Domain.Plans;

/// <summary>The value itself lies strictly below or above a bound in the measure's unit: <c>top-spine-tilt below -2</c>. The finding must also be out of range.</summary>
/// <param name="Measure">The measure.</param>
/// <param name="Side">Low for "below", High for "above".</param>
/// <param name="Bound">The bound, in the measure's unit.</param>
public sealed record ValueCondition(MeasureId Measure, Side Side, double Bound) : Condition;

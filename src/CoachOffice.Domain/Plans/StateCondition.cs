using CoachOffice.Domain.Measuring;

namespace CoachOffice.Domain.Plans;

/// <summary>What is known of a measure: <c>in range</c>, <c>not in range</c>, <c>measured</c>, <c>not measured</c>.</summary>
public sealed record StateCondition(MeasureId Measure, MeasureState State) : Condition;

using CoachOffice.Domain.Measuring;

namespace CoachOffice.Domain.Plans;

/// <summary>The value is the mean of enough swings: <c>contact-offset-toe read at least 8 times</c>.</summary>
public sealed record ReadingsCondition(MeasureId Measure, int AtLeast) : Condition;

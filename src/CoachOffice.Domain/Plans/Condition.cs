using CoachOffice.Domain.Measuring;

namespace CoachOffice.Domain.Plans;

/// <summary>One test a pattern makes of a lesson's findings. The written form is in <c>rules/</c>; the reader makes these.</summary>
public abstract record Condition;

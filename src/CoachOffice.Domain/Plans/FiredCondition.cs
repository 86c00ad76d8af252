namespace CoachOffice.Domain.Plans;

/// <summary>Another pattern holds; used only under <c>unless</c>: <c>pattern body-outruns</c>. References may not form a cycle.</summary>
public sealed record FiredCondition(PatternId Pattern) : Condition;

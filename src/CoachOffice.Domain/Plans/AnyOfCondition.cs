namespace CoachOffice.Domain.Plans;

/// <summary>At least one of several tests holds.</summary>
public sealed record AnyOfCondition(IReadOnlyList<Condition> Any) : Condition;

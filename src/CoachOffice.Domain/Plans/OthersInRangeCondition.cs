namespace CoachOffice.Domain.Plans;

/// <summary>Enough measures the pattern does not name in its findings are measured and in range: <c>at least 4 others in range</c>.</summary>
public sealed record OthersInRangeCondition(int AtLeast) : Condition;

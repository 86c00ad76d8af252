using Vogen;

namespace CoachOffice.Domain.Plans;

/// <summary>Identity of a stored draft.</summary>
[ValueObject<Guid>]
public readonly partial struct DraftId;

/// <summary>Identity of a plan.</summary>
[ValueObject<Guid>]
public readonly partial struct PlanId;

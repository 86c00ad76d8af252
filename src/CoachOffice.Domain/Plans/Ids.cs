using Vogen;

namespace CoachOffice.Domain.Plans;

/// <summary>Id of a pattern in the rulebook.</summary>
[ValueObject<string>]
public readonly partial struct PatternId;

/// <summary>Id of a drill in the rulebook.</summary>
[ValueObject<string>]
public readonly partial struct DrillId;

/// <summary>Id of a progression in the rulebook.</summary>
[ValueObject<string>]
public readonly partial struct ProgressionId;

/// <summary>Id of a caution in the rulebook.</summary>
[ValueObject<string>]
public readonly partial struct CautionId;

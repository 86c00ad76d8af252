using Vogen;

namespace CoachOffice.Domain.Lessons;

/// <summary>Identity of a take.</summary>
[ValueObject<Guid>]
public readonly partial struct TakeId;

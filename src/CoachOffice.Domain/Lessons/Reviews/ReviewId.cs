using Vogen;

namespace CoachOffice.Domain.Lessons.Reviews;

/// <summary>Identity of a remote review.</summary>
[ValueObject<Guid>]
public readonly partial struct ReviewId;

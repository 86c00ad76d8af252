using Vogen;

namespace CoachOffice.Domain.Students;

/// <summary>Identity of a student.</summary>
[ValueObject<Guid>]
public readonly partial struct StudentId;

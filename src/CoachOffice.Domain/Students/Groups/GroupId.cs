using Vogen;

namespace CoachOffice.Domain.Students.Groups;

/// <summary>Identity of a group of students.</summary>
[ValueObject<Guid>]
public readonly partial struct GroupId;

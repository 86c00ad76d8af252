using CoachOffice.Domain.Students.Groups;

namespace CoachOffice.UseCases.Students;

/// <summary>What a list of students is narrowed down to; null is not narrowed.</summary>
/// <param name="Group">Members of this group alone.</param>
public sealed record StudentsWithin(GroupId? Group);

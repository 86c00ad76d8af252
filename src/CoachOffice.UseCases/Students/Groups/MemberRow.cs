using CoachOffice.Domain.Students;

namespace CoachOffice.UseCases.Students.Groups;

/// <summary>A student in a list of members.</summary>
/// <param name="Id">Whom.</param>
/// <param name="Name">Full name.</param>
/// <param name="IsArchived">True while the student is put away.</param>
public sealed record MemberRow(StudentId Id, string Name, bool IsArchived);

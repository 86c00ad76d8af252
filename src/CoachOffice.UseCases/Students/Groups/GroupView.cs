using CoachOffice.Domain.Students.Groups;

namespace CoachOffice.UseCases.Students.Groups;

/// <summary>A group with its members.</summary>
/// <param name="Id">Which.</param>
/// <param name="Name">Its name.</param>
/// <param name="IsArchived">True while it is put away.</param>
/// <param name="Members">By family name, then given name.</param>
public sealed record GroupView(GroupId Id, string Name, bool IsArchived, IReadOnlyList<MemberRow> Members);

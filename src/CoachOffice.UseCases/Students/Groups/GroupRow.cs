using CoachOffice.Domain.Students.Groups;

namespace CoachOffice.UseCases.Students.Groups;

/// <summary>A group as listed.</summary>
/// <param name="Id">Which.</param>
/// <param name="Name">Its name.</param>
/// <param name="Members">How many members are not archived.</param>
public sealed record GroupRow(GroupId Id, string Name, int Members);

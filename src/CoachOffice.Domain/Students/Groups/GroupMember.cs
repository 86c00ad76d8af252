using NodaTime;

namespace CoachOffice.Domain.Students.Groups;

/// <summary>A student in a group.</summary>
/// <param name="GroupId">The group.</param>
/// <param name="StudentId">The student.</param>
/// <param name="Since">When they were put into it.</param>
public sealed record GroupMember(GroupId GroupId, StudentId StudentId, Instant Since);

using Vogen;

namespace CoachOffice.Domain.Lessons;

/// <summary>Identity of a lesson record.</summary>
[ValueObject<Guid>]
public readonly partial struct LessonId;

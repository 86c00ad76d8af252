using CoachOffice.Domain.Lessons;

namespace CoachOffice.UseCases.Students;

/// <summary>A lesson with the number of readings that stand.</summary>
public sealed record HeldLesson(Lesson Lesson, int Readings);

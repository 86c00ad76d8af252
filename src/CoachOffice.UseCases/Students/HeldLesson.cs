using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using NodaTime;

namespace CoachOffice.UseCases.Students;

/// <summary>A lesson as far as a student's story tells of it, with the number of readings that stand.</summary>
public sealed record HeldLesson(LessonId Id, LocalDate HeldOn, Instant CreatedAt, LessonKind Kind, Club Club, int Readings);

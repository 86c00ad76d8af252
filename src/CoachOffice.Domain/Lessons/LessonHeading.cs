using CoachOffice.Domain.Measuring;
using NodaTime;

namespace CoachOffice.Domain.Lessons;

/// <summary>When, with which club and why.</summary>
public sealed record LessonHeading(LocalDate HeldOn, Club Club, LessonKind Kind = LessonKind.Lesson);

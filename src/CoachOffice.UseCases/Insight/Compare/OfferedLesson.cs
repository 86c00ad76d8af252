using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using NodaTime;

namespace CoachOffice.UseCases.Insight.Compare;

/// <summary>A lesson or re-test with readings.</summary>
public sealed record OfferedLesson(LessonId Id, LocalDate HeldOn, Club Club, LessonKind Kind);

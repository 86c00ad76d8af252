using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using NodaTime;

namespace CoachOffice.UseCases.Lessons;

/// <summary>A standing reading of an earlier lesson.</summary>
internal sealed record EarlierReading(LessonId Lesson, LocalDate HeldOn, Instant CreatedAt, MeasureId Measure, double Value)
{
    public static IReadOnlyList<EarlierReading> Of(Lesson lesson) => [.. lesson.Readings.Select(r => new EarlierReading(lesson.Id, lesson.HeldOn, lesson.CreatedAt, r.Measure, r.Value))];
}

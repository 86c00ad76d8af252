using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Media;

namespace CoachOffice.UseCases.Media;

/// <summary>Which values of a still go into the sheet, and the versions they were seen at.</summary>
/// <param name="Lesson">The lesson.</param>
/// <param name="Still">Its still.</param>
/// <param name="LessonVersion">Of the lesson as shown.</param>
/// <param name="StillVersion">Of the marks as shown.</param>
/// <param name="Measures">Ids of the measures that were ticked.</param>
public sealed record PutOrder(LessonId Lesson, MediaId Still, int LessonVersion, int StillVersion, IReadOnlyCollection<string> Measures);

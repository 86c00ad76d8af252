using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using NodaTime;

namespace CoachOffice.UseCases.Lessons;

/// <summary>Saves a lesson's sheet: all of it or nothing.</summary>
public sealed class SaveLesson
{
    public Task<Outcome<LessonId>> As(LessonId lesson, int version, LessonForm form, Actor actor) => throw new InvalidOperationException("This part is on its way.");
}

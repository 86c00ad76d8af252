using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using NodaTime;

namespace CoachOffice.UseCases.Lessons;

/// <summary>Opens a lesson record.</summary>
public sealed class StartLesson
{
    public Task<Outcome<LessonId>> For(StudentId student, LessonHeading heading, Actor actor) => throw new InvalidOperationException("This part is on its way.");
}

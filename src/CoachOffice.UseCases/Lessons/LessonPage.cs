using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using NodaTime;

namespace CoachOffice.UseCases.Lessons;

/// <summary>Shows a lesson with its sheet.</summary>
public sealed class LessonPage
{
    public Task<LessonView?> Of(LessonId lesson) => throw new InvalidOperationException("This part is on its way.");
}

using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using NodaTime;

namespace CoachOffice.UseCases.Plans;

/// <summary>Drafts a plan from a lesson and stores both draft and proposal.</summary>
public sealed class DraftPlan
{
    public Task<Outcome<PlanId>> For(LessonId lesson, Actor actor) => throw new InvalidOperationException("This part is on its way.");
}

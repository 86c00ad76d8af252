using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using NodaTime;

namespace CoachOffice.UseCases.Plans;

/// <summary>Approves a plan: its gates, re-tests and messages begin in one transaction.</summary>
public sealed class ApprovePlan
{
    public Task<Outcome<PlanId>> Now(PlanId plan, int version, Actor actor) => throw new InvalidOperationException("This part is on its way.");
}

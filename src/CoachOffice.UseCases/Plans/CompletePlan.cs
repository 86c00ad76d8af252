using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using NodaTime;

namespace CoachOffice.UseCases.Plans;

/// <summary>Ends a plan that has done its work.</summary>
public sealed class CompletePlan
{
    public Task<Outcome<PlanId>> Now(PlanId plan, int version, string reason, Actor actor) => throw new InvalidOperationException("This part is on its way.");
}

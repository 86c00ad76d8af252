using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using NodaTime;

namespace CoachOffice.UseCases.Plans;

/// <summary>Pauses a plan and its messages.</summary>
public sealed class PausePlan
{
    public Task<Outcome<PlanId>> Now(PlanId plan, int version, string reason, Actor actor) => throw new InvalidOperationException("This part is on its way.");
}

using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using NodaTime;

namespace CoachOffice.UseCases.Plans;

/// <summary>Restarts a paused plan on a day; only a coach does.</summary>
public sealed class ResumePlan
{
    public Task<Outcome<PlanId>> On(PlanId plan, int version, LocalDate restartsOn, string reason, Actor actor) => throw new InvalidOperationException("This part is on its way.");
}

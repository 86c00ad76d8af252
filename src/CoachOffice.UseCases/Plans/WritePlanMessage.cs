using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using NodaTime;

namespace CoachOffice.UseCases.Plans;

/// <summary>Writes the coach's words on top of a plan.</summary>
public sealed class WritePlanMessage
{
    public Task<Outcome<PlanId>> On(PlanId plan, int version, string message, Actor actor) => throw new InvalidOperationException("This part is on its way.");
}

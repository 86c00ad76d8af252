using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using NodaTime;

namespace CoachOffice.UseCases.Plans;

/// <summary>Takes a drill out of a rung.</summary>
public sealed class RemoveDrill
{
    public Task<Outcome<PlanId>> From(EditOf edit, string drill, Actor actor) => throw new InvalidOperationException("This part is on its way.");
}

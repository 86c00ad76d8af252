using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using NodaTime;

namespace CoachOffice.UseCases.Plans;

/// <summary>Puts the rungs into another order.</summary>
public sealed class ReorderStages
{
    public Task<Outcome<PlanId>> As(EditOf edit, IReadOnlyList<Guid> order, Actor actor) => throw new InvalidOperationException("This part is on its way.");
}

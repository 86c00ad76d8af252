using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using NodaTime;

namespace CoachOffice.UseCases.Plans;

/// <summary>Puts another drill of the book in a drill's place.</summary>
public sealed class SwapDrill
{
    public Task<Outcome<PlanId>> For(EditOf edit, string drill, string instead, Actor actor) => throw new InvalidOperationException("This part is on its way.");
}

using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using NodaTime;

namespace CoachOffice.UseCases.Plans;

/// <summary>Changes a drill's counts or cue.</summary>
public sealed class ChangeDrill
{
    public Task<Outcome<PlanId>> In(EditOf edit, string drill, DrillCounts counts, Actor actor) => throw new InvalidOperationException("This part is on its way.");
}

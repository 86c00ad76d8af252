using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using NodaTime;

namespace CoachOffice.UseCases.Plans;

/// <summary>Notes that a coach has dealt with a pain report.</summary>
public sealed class SeePainReport
{
    public Task<Outcome<PlanId>> Done(Guid checkIn, Actor actor) => throw new InvalidOperationException("This part is on its way.");
}

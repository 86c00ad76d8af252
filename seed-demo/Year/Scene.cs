using CoachOffice.Domain.Plans;
using CoachOffice.SeedDemo.Making;

namespace CoachOffice.SeedDemo.Year;

/// <summary>Where the year takes place.</summary>
internal sealed record Scene(SeedOffice Office, DemoCalendar Calendar, Cast Cast, Rulebook Book)
{
    /// <summary>A plan with its rungs, to look at.</summary>
    public Task<Plan> Plan(PlanId id, CancellationToken stop) => Office.Read(db => PlanLook.Of(db, id, stop));
}

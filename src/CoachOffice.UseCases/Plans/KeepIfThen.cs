using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using NodaTime;

namespace CoachOffice.UseCases.Plans;

/// <summary>Keeps the student's own if-then sentence.</summary>
public sealed class KeepIfThen
{
    public Task<Outcome<PlanId>> From(string ifThen, LinkPass pass) => throw new InvalidOperationException("This part is on its way.");
}

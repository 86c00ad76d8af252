using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using NodaTime;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>Sends what is due.</summary>
public sealed class SweepMessages
{
    public Task<SweepResult> Once(CancellationToken stop) => throw new InvalidOperationException("This part is on its way.");
}

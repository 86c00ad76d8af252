using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using NodaTime;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>Shows what a stop link would stop; changes nothing.</summary>
public sealed class StopPage
{
    public Task<StopPass?> Of(string token) => throw new InvalidOperationException("This part is on its way.");
}

using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using NodaTime;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>Lets a message go with the next sweep, whatever the hour.</summary>
public sealed class SendMessageNow
{
    public Task<Outcome<Guid>> Now(Guid message, Actor actor) => throw new InvalidOperationException("This part is on its way.");
}

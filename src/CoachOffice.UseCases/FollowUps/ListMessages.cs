using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using NodaTime;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>Lists messages and their state.</summary>
public sealed class ListMessages
{
    public Task<Outcome<MessageList>> Now(MessageFilter filter, int page, Actor actor) => throw new InvalidOperationException("This part is on its way.");
}

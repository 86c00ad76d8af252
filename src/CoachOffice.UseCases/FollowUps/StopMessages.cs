using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using NodaTime;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>Ends reminders for the student of a stop link.</summary>
public sealed class StopMessages
{
    public Task<Outcome<StopPass>> By(string token) => throw new InvalidOperationException("This part is on its way.");
}

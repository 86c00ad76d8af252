using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using NodaTime;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>Puts a message on another day.</summary>
public sealed class MoveMessage
{
    public Task<Outcome<Guid>> To(Guid message, LocalDate day, LocalTime? time, Actor actor) => throw new InvalidOperationException("This part is on its way.");
}

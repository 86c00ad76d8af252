using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons.Reviews;
using CoachOffice.UseCases.Access;
using NodaTime;

namespace CoachOffice.UseCases.Lessons.Reviews;

/// <summary>What every deed on a remote review needs: the time, an identifier, an audit row.</summary>
public sealed class ReviewDoor(PracticeClock clock, INewIds ids, AuditTrail trail)
{
    /// <summary>Now, to the millisecond.</summary>
    public Instant Now => clock.Now;

    /// <summary>The practice's zone.</summary>
    public Task<DateTimeZone> Zone(CancellationToken stop = default) => clock.Zone(stop);

    /// <summary>A new identifier.</summary>
    public Guid NewId() => ids.Next();

    /// <summary>Adds the audit row that is saved with the deed.</summary>
    public void Note(Actor actor, string action, ReviewId review) => trail.Add(actor, action, AuditSubject.Of(review));
}

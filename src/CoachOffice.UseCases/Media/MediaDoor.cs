using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Media;
using CoachOffice.UseCases.Access;
using NodaTime;

namespace CoachOffice.UseCases.Media;

/// <summary>What every deed on a still or clip needs: the time, an identifier, an audit row.</summary>
public sealed class MediaDoor(PracticeClock clock, INewIds ids, AuditTrail trail)
{
    /// <summary>Now, to the millisecond.</summary>
    public Instant Now => clock.Now;

    /// <summary>Today in the practice's zone.</summary>
    public Task<LocalDate> Today(CancellationToken stop = default) => clock.Today(stop);

    /// <summary>The door for new identifiers.</summary>
    public INewIds Ids => ids;

    /// <summary>A new identifier.</summary>
    public Guid NewId() => ids.Next();

    /// <summary>Adds the audit row that is saved with the deed.</summary>
    public void Note(Actor actor, string action, MediaId media, string? detail = null) => Note(actor, action, AuditSubject.Of(media), detail);

    /// <summary>The same for a deed whose subject is another thing.</summary>
    public void Note(Actor actor, string action, AuditSubject subject, string? detail = null) => trail.Add(actor, action, subject, detail);
}

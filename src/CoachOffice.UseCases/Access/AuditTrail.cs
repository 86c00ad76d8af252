using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.UseCases.Watching;
using NodaTime;

namespace CoachOffice.UseCases.Access;

/// <summary>Writes who did what into the transaction of the deed itself.</summary>
public sealed class AuditTrail(OfficeDb db, INewIds ids, IClock clock, OfficeMeter meter)
{
    /// <summary>Adds a row that is saved with everything else; codes and ids only, never personal data.</summary>
    public void Add(Actor actor, string action, AuditSubject subject, string? detail = null)
    {
        ArgumentNullException.ThrowIfNull(actor);
        ArgumentNullException.ThrowIfNull(subject);
        db.AuditEntries.Add(new AuditEntry
        {
            Id = ids.Next(),
            At = clock.GetCurrentInstant(),
            Account = actor.Account?.Value,
            ActorName = actor.Name,
            Action = action,
            Subject = subject.Kind,
            SubjectId = subject.Id,
            Detail = detail,
        });
        meter.Did(action);
    }
}

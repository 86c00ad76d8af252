using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;

namespace CoachOffice.UseCases.Media;

/// <summary>Writes down that consent to stills and clips was withdrawn: from then on none is shown or added.</summary>
public sealed class WithdrawMediaConsent(OfficeDb db, MediaConsents consents, MediaDoor door)
{
    /// <summary>The student, or why not. What was withdrawn already stays so.</summary>
    public async Task<Outcome<StudentId>> Of(StudentId id, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayKeepStudents || actor.Account is not { } by) return NotAllowed.To("record consent");
        if (await consents.Last(id, stop) is not { } last) return new Refusal("consent-not-found", "No consent is recorded for this student.");
        if (last.WithdrawnAt is not null) return id;
        last.Withdraw(by, door.Now);
        door.Note(actor, "media-consent-withdrawn", AuditSubject.Of(id));
        await db.SaveChangesAsync(stop);
        return id;
    }
}

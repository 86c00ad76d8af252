using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Media;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Media;

/// <summary>Records somebody's consent to stills and clips of a student.</summary>
public sealed class GiveMediaConsent(OfficeDb db, MediaConsents consents, MediaDoor door)
{
    private const int LongestName = 120;

    /// <summary>The student, or why not. A consent that stands is left as it is.</summary>
    public async Task<Outcome<StudentId>> For(StudentId id, ConsentForm form, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(form);
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayKeepStudents || actor.Account is not { } by) return NotAllowed.To("record consent");
        if (await db.Students.AsNoTracking().SingleOrDefaultAsync(s => s.Id == id && s.ErasedAt == null, stop) is null) return new Refusal("student-not-found", "There is no such student; the link may be old, or the student was erased.");
        if (!OneLine.Shows(form.GivenBy) || form.GivenBy.Trim().Length > LongestName || !OneLine.Fits(form.GivenBy)) return new Refusal("consent-by", $"Say by name who gave consent, in up to {LongestName} characters.", nameof(form.GivenBy));
        if (form.GivenOn > await door.Today(stop)) return new Refusal("consent-day", "Consent is recorded on the day it was given or later.", nameof(form.GivenOn));
        if (await consents.Last(id, stop) is { WithdrawnAt: null }) return id;
        db.MediaConsents.Add(MediaConsent.Give(door.NewId(), id, form.GivenBy, form.GivenOn, by, door.Now));
        door.Note(actor, "media-consent-given", AuditSubject.Of(id));
        await db.SaveChangesAsync(stop);
        return id;
    }
}

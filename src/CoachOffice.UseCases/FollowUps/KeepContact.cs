using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>Keeps how messages reach a student, as they chose: told to a person of the practice, or by themselves behind their private link.</summary>
public sealed class KeepContact(OfficeDb db, AuditTrail trail, PracticeClock clock)
{
    private const int LastHour = 23;

    /// <summary>The student's id, or why not.</summary>
    public async Task<Outcome<StudentId>> For(StudentId student, ContactWishes wishes, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(wishes);
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayKeepStudents && actor != Actor.Student) return NotAllowed.To("change how messages reach a student");
        var found = await db.Students.SingleOrDefaultAsync(s => s.Id == student && s.ErasedAt == null, stop);
        if (found is null) return new Refusal("student-not-found", "There is no such student.");
        if (Check(wishes, found.TextNumberOn(await clock.Today(stop))).ToList() is { Count: > 0 } against) return Outcome<StudentId>.Refused(against);
        found.Reach(wishes);
        trail.Add(actor, "contact-kept", AuditSubject.Of(student), wishes.AppointmentsByText ? "text" : "mail");
        return await db.TrySave(stop) == Saved.Yes ? student : new Refusal(Clash.Code, "Someone changed this student just now; look again, then repeat it.");
    }

    private static IEnumerable<Refusal> Check(ContactWishes wishes, string? number)
    {
        if (wishes.AppointmentsByText && number is null)
            yield return new Refusal("contact-number", "Text messages need a phone number with its country's code, such as +44 1632 960001; for a student under 18 the guardian's. Change it among the details first.", "By");
        var (from, until) = (wishes.QuietFrom, wishes.QuietUntil);
        if (from is < 0 or > LastHour || until is < 0 or > LastHour) yield return new Refusal("contact-hour", "Hours go from 0 to 23.", "From");
        if ((from is null) != (until is null) || (from is not null && from == until)) yield return new Refusal("contact-quiet", "Give two different hours, from and until, or leave both empty for the practice's night.", "From");
        if (wishes.Zone.Length > 0 && DateTimeZoneProviders.Tzdb.GetZoneOrNull(wishes.Zone) is null) yield return new Refusal("contact-zone", "Pick a time zone from the list.", "Zone");
    }
}

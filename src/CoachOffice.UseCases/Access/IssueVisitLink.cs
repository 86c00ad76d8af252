using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Students;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Access;

/// <summary>Makes a private link to a student's own lessons that is printed or handed over in person.</summary>
public sealed class IssueVisitLink(OfficeDb db, PrivateLinks links, AuditTrail trail)
{
    /// <summary>How long a link to the lessons is good: a year of lessons (own judgement); every letter about a lesson brings a new one.</summary>
    public static readonly Duration Life = Duration.FromDays(365);

    /// <summary>The address with the token in it; it cannot be shown again.</summary>
    public async Task<Outcome<Uri>> For(StudentId student, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayKeepStudents) return NotAllowed.To("hand out private links");
        if (!await db.Students.AnyAsync(s => s.Id == student && s.ErasedAt == null, stop)) return new Refusal("student-not-found", "There is no such student.");
        var address = await db.Practices.Select(p => p.PublicAddress).SingleAsync(stop);
        var token = links.MintVisits(student, Life);
        trail.Add(actor, "visit-link-issued", AuditSubject.Of(student));
        await db.SaveChangesAsync(stop);
        return new Uri($"{address}/v/{token}");
    }
}

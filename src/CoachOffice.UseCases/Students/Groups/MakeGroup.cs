using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Students.Groups;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Students.Groups;

/// <summary>Begins a group.</summary>
public sealed class MakeGroup(OfficeDb db, PracticeClock clock, AuditTrail trail)
{
    /// <summary>The group under an id made when the form was shown, so that a form posted twice makes one; or what is wrong with its name.</summary>
    public async Task<Outcome<GroupId>> Named(GroupId id, string name, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayKeepStudents) return NotAllowed.To("make groups");
        if (StudentGroup.Refuses(name) is { } wrong) return wrong;
        if (await db.StudentGroups.AnyAsync(g => g.Id == id, stop)) return id;
        db.StudentGroups.Add(StudentGroup.Begin(id, name, clock.Now));
        trail.Add(actor, "group-made", AuditSubject.Of(id));

        // Twice at the very same moment: the other one made it.
        await db.TrySave(stop);
        return id;
    }
}

using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Students.Groups;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Students.Groups;

/// <summary>Finds a group for whoever may change it, and saves what was done to it.</summary>
public sealed class GroupDoor(OfficeDb db, PracticeClock clock, AuditTrail trail)
{
    internal Instant Now => clock.Now;

    /// <summary>The group with its members, archived ones too.</summary>
    internal async Task<Outcome<StudentGroup>> Find(GroupId id, Actor actor, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayKeepStudents) return NotAllowed.To("change groups");
        var group = await db.StudentGroups.Include(g => g.Members).SingleOrDefaultAsync(g => g.Id == id, stop);
        return group is null ? GroupRefusals.NotFound : group;
    }

    /// <summary>Saves it with who did what.</summary>
    internal async Task<Outcome<GroupId>> Save(StudentGroup group, Actor actor, string deed, string? detail, CancellationToken stop)
    {
        trail.Add(actor, deed, AuditSubject.Of(group.Id), detail);
        return await db.TrySave(stop) == Saved.Yes ? group.Id : GroupRefusals.Busy;
    }
}

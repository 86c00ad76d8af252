using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Students;
using CoachOffice.Domain.Students.Groups;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Students.Groups;

/// <summary>Puts a student into a group.</summary>
public sealed class PutIntoGroup(OfficeDb db, GroupDoor door)
{
    /// <summary>The group; whoever is in it already stays in it.</summary>
    public async Task<Outcome<GroupId>> The(StudentId student, GroupId id, Actor actor, CancellationToken stop = default)
    {
        var found = await door.Find(id, actor, stop);
        if (!found.TryGet(out var group)) return Outcome<GroupId>.Refused(found.Refusals);
        if (group.ArchivedAt is not null) return new Refusal("group-archived", "This group is archived; bring it back before you put anybody into it.");
        if (!await db.Students.AnyAsync(s => s.Id == student && s.ErasedAt == null, stop)) return StudentRefusals.NotFound;
        return group.Add(student, door.Now) ? await door.Save(group, actor, "group-joined", $"student:{student.Value}", stop) : id;
    }
}

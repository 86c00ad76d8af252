using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Students;
using CoachOffice.Domain.Students.Groups;

namespace CoachOffice.UseCases.Students.Groups;

/// <summary>Takes a student out of a group.</summary>
public sealed class TakeFromGroup(GroupDoor door)
{
    /// <summary>The group; whoever is not in it is no fault.</summary>
    public async Task<Outcome<GroupId>> The(StudentId student, GroupId id, Actor actor, CancellationToken stop = default)
    {
        var found = await door.Find(id, actor, stop);
        if (!found.TryGet(out var group)) return Outcome<GroupId>.Refused(found.Refusals);
        return group.Remove(student) ? await door.Save(group, actor, "group-left", $"student:{student.Value}", stop) : id;
    }
}

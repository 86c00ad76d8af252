using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Students.Groups;

namespace CoachOffice.UseCases.Students.Groups;

/// <summary>Calls a group otherwise.</summary>
public sealed class RenameGroup(GroupDoor door)
{
    /// <summary>The group, or why not.</summary>
    public async Task<Outcome<GroupId>> To(GroupId id, string name, Actor actor, CancellationToken stop = default)
    {
        var found = await door.Find(id, actor, stop);
        if (!found.TryGet(out var group)) return Outcome<GroupId>.Refused(found.Refusals);
        if (StudentGroup.Refuses(name) is { } wrong) return wrong;
        group.Rename(name);
        return await door.Save(group, actor, "group-renamed", null, stop);
    }
}

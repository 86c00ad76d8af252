using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Students.Groups;

namespace CoachOffice.UseCases.Students.Groups;

/// <summary>Puts a group away: it keeps its members and is offered nowhere.</summary>
public sealed class ArchiveGroup(GroupDoor door)
{
    /// <summary>The group; archiving twice is no fault.</summary>
    public async Task<Outcome<GroupId>> Now(GroupId id, Actor actor, CancellationToken stop = default)
    {
        var found = await door.Find(id, actor, stop);
        if (!found.TryGet(out var group)) return Outcome<GroupId>.Refused(found.Refusals);
        if (group.ArchivedAt is not null) return id;
        group.Archive(door.Now);
        return await door.Save(group, actor, "group-archived", null, stop);
    }
}

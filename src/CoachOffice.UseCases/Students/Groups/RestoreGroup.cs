using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Students.Groups;

namespace CoachOffice.UseCases.Students.Groups;

/// <summary>Takes a group out of the archive.</summary>
public sealed class RestoreGroup(GroupDoor door)
{
    /// <summary>The group; one that was never away is no fault.</summary>
    public async Task<Outcome<GroupId>> Now(GroupId id, Actor actor, CancellationToken stop = default)
    {
        var found = await door.Find(id, actor, stop);
        if (!found.TryGet(out var group)) return Outcome<GroupId>.Refused(found.Refusals);
        if (group.ArchivedAt is null) return id;
        group.Restore();
        return await door.Save(group, actor, "group-restored", null, stop);
    }
}

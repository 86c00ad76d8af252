using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Students.Groups;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Students.Groups;

/// <summary>Everything about one group on one page.</summary>
public sealed class GroupPage(OfficeDb db)
{
    /// <summary>The group, or a refusal that there is none.</summary>
    public async Task<Outcome<GroupView>> Of(GroupId id, CancellationToken stop = default)
    {
        var group = await db.StudentGroups.AsNoTracking().Where(g => g.Id == id).Select(g => new { g.Name, g.ArchivedAt }).SingleOrDefaultAsync(stop);
        if (group is null) return GroupRefusals.NotFound;
        var members = await db.Students.Where(s => db.GroupMembers.Any(m => m.GroupId == id && m.StudentId == s.Id)).OrderBy(s => s.SearchText).ThenBy(s => s.Id)
            .Select(s => new { s.Id, s.GivenName, s.FamilyName, s.ArchivedAt }).ToListAsync(stop);
        return new GroupView(id, group.Name, group.ArchivedAt is not null, [.. members.Select(m => new MemberRow(m.Id, $"{m.GivenName} {m.FamilyName}".Trim(), m.ArchivedAt is not null))]);
    }
}

using CoachOffice.Data;
using CoachOffice.Domain.Students;
using CoachOffice.Domain.Students.Groups;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Students.Groups;

/// <summary>The groups of the practice.</summary>
public sealed class ListGroups(OfficeDb db)
{
    /// <summary>By name.</summary>
    public async Task<IReadOnlyList<GroupRow>> Now(bool archived, CancellationToken stop = default) =>
        Sorted(await Rows(db.StudentGroups.Where(g => archived ? g.ArchivedAt != null : g.ArchivedAt == null)).ToListAsync(stop));

    /// <summary>Those a student is in, by name; archived ones are left out.</summary>
    public async Task<IReadOnlyList<GroupRow>> Of(StudentId student, CancellationToken stop = default) =>
        Sorted(await Rows(db.StudentGroups.Where(g => g.ArchivedAt == null && g.Members.Any(m => m.StudentId == student))).ToListAsync(stop));

    private IQueryable<GroupRow> Rows(IQueryable<StudentGroup> groups) =>
        groups.Select(g => new GroupRow(g.Id, g.Name, g.Members.Count(m => db.Students.Any(s => s.Id == m.StudentId && s.ArchivedAt == null))));

    private static IReadOnlyList<GroupRow> Sorted(List<GroupRow> rows) => [.. rows.OrderBy(r => StudentSearch.Fold(r.Name), StringComparer.Ordinal).ThenBy(r => r.Id.Value)];
}

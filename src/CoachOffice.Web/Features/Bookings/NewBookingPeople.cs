using CoachOffice.Domain.Students;
using CoachOffice.Domain.Students.Groups;
using CoachOffice.UseCases.Students;
using CoachOffice.UseCases.Students.Groups;

namespace CoachOffice.Web.Features.Bookings;

/// <summary>The students of a booking that is being made: those picked, and those a text finds.</summary>
public sealed class NewBookingPeople(ReadStudent read, FindStudents find, ListGroups groups, GroupPage group)
{
    /// <summary>Groups whose members can be booked at once.</summary>
    internal Task<IReadOnlyList<GroupRow>> Groups() => groups.Now(archived: false);

    /// <summary>Everybody in a group; nobody when there is no such group.</summary>
    internal async Task<IReadOnlyList<StudentId>> In(Guid id) =>
        id != Guid.Empty && (await group.Of(GroupId.From(id))).TryGet(out var view) ? [.. view.Members.Select(m => m.Id)] : [];

    internal Task<StudentList> Matching(string? text) => find.Matching((text ?? "").Trim(), 1, archived: false);

    internal async Task<IReadOnlyList<Student>> Of(IReadOnlyList<StudentId> ids)
    {
        var found = new List<Student>();
        foreach (var id in ids)
        {
            if (await read.Of(id) is { ErasedAt: null } student) found.Add(student);
        }

        return found;
    }
}

using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Students;

namespace CoachOffice.Web.Features.Bookings;

/// <summary>The students of a booking that is being made: those picked, and those a text finds.</summary>
public sealed class NewBookingPeople(ReadStudent read, FindStudents find)
{
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

using CoachOffice.Data;
using CoachOffice.Domain.Students;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Students;

/// <summary>One student's details.</summary>
public sealed class ReadStudent(OfficeDb db)
{
    /// <summary>The student, archived or erased ones too, or null.</summary>
    public Task<Student?> Of(StudentId id, CancellationToken stop = default) =>
        db.Students.AsNoTracking().SingleOrDefaultAsync(s => s.Id == id, stop);
}

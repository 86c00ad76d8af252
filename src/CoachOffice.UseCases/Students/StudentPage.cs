using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Students;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Students;

/// <summary>Everything about one student on one page.</summary>
public sealed class StudentPage(OfficeDb db, PracticeClock clock, StudentHistory history)
{
    /// <summary>The student, or a refusal that there is none.</summary>
    public async Task<Outcome<StudentStory>> Of(StudentId id, CancellationToken stop = default)
    {
        var student = await db.Students.AsNoTracking().SingleOrDefaultAsync(s => s.Id == id, stop);
        if (student is null) return StudentRefusals.NotFound;
        var today = await clock.Today(stop);
        var facts = await history.Of(id, stop);
        var born = student.BirthDate;
        return new StudentStory
        {
            Student = student,
            IsMinor = born is { } day && Ages.IsMinor(day, today),
            Age = born is { } birthday ? Ages.On(birthday, today) : null,
            NextStep = student.ArchivedAt is null ? NextSteps.After(facts, today) : null,
            Items = StoryTelling.Of(facts, await clock.Zone(stop)),
        };
    }
}

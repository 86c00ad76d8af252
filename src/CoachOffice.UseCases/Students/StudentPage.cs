using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Students;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Students;

/// <summary>Everything about one student on one page.</summary>
public sealed class StudentPage(OfficeDb db, PracticeClock clock, StudentHistory history)
{
    private static readonly CompiledQuery<StudentId, Student> ById = new((db, id) => db.Students.AsNoTracking().Where(s => s.Id == id));

    /// <summary>The student, or a refusal that there is none.</summary>
    public async Task<Outcome<StudentStory>> Of(StudentId id, CancellationToken stop = default)
    {
        if (await ById.Rows(db, id, stop) is not [var student]) return StudentRefusals.NotFound;
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

using CoachOffice.Data;
using CoachOffice.Domain.Lessons;
using CoachOffice.UseCases.Plans;
using Microsoft.EntityFrameworkCore;
using Book = CoachOffice.Domain.Plans.Rulebook;

namespace CoachOffice.UseCases.Lessons;

/// <summary>Gives an input to lessons saved without one, some at a time: those from before inputs were kept, re-tests, and lessons whose measures the book took up again. A draft made from the lesson says what it was made from; else the student counts as they are now.</summary>
public sealed class FillLessonInputs(OfficeDb db, LessonInputs inputs, PlanBooks books)
{
    /// <summary>So many lessons are filled in one transaction, which holds up nobody's save for long.</summary>
    public const int AtOnce = 50;

    /// <summary>Fills those of these lessons that still have none; at most <see cref="AtOnce"/>. Somebody who saves one of them meanwhile wins, and the others wait for the next time.</summary>
    public async Task<Saved> For(IReadOnlyList<LessonId> lessons, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(lessons);
        var book = await books.InForce(stop);
        var missing = await db.Lessons.Include(l => l.AllReadings).Where(l => lessons.Contains(l.Id) && !db.LessonInputs.Any(i => i.LessonId == l.Id)).ToListAsync(stop);
        foreach (var lesson in missing) await Fill(lesson, book, stop);
        return await db.TrySave(stop);
    }

    private async Task Fill(Lesson lesson, Book book, CancellationToken stop)
    {
        var drafted = await db.StoredDrafts.Where(d => d.LessonId == lesson.Id && d.InputJson != "").OrderByDescending(d => d.MadeAt).ThenByDescending(d => d.Id).Select(d => d.InputJson).FirstOrDefaultAsync(stop);
        if (drafted is null) await inputs.Keep(lesson, book, stop);
        else await inputs.KeepDrafted(lesson, Drafting.Reading.Canonical.CanonicalInputReader.Read(drafted), stop);
    }
}

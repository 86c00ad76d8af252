using System.Text;
using CoachOffice.Data;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.Drafting.Reading.Canonical;
using CoachOffice.UseCases.Measuring;
using Microsoft.EntityFrameworkCore;
using NodaTime;
using Book = CoachOffice.Domain.Plans.Rulebook;

namespace CoachOffice.UseCases.Lessons;

/// <summary>Keeps with each lesson what a draft of it is made from, in the transaction of whoever saves the lesson or drafts it.</summary>
public sealed class LessonInputs(OfficeDb db, TriedBefore tried)
{
    /// <summary>What a draft of the lesson is made from on a day. The book must have every measure read in it.</summary>
    public async Task<LessonFacts> Facts(Lesson lesson, LocalDate on, Book book, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        ArgumentNullException.ThrowIfNull(book);
        var student = await db.Students.SingleAsync(s => s.Id == lesson.StudentId, stop);
        return new LessonFacts
        {
            AsOf = on,
            Student = FactsOfStudent.On(student, on),
            Club = lesson.Club,
            Readings = LessonValues.Of(lesson.Readings, id => book.Find(id)!.Unit),
            Tried = await tried.By(student.Id, stop),
        };
    }

    /// <summary>The lesson is being saved. One without a reading the book knows has no input.</summary>
    public async Task Keep(Lesson lesson, Book book, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        ArgumentNullException.ThrowIfNull(book);
        var kept = await Find(lesson.Id, stop);
        if (CanBeDrafted(lesson, book))
        {
            var facts = await Facts(lesson, lesson.HeldOn, book, stop);
            (kept ?? Add(lesson)).Save(lesson.Club, Text(facts));
        }
        else if (kept is { IsDrafted: false }) db.LessonInputs.Remove(kept);
    }

    /// <summary>The lesson was drafted from these facts.</summary>
    public async Task KeepDrafted(Lesson lesson, LessonFacts facts, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        ArgumentNullException.ThrowIfNull(facts);
        (await Find(lesson.Id, stop) ?? Add(lesson)).Draft(facts.Club, Text(facts));
    }

    /// <summary>The canonical text of facts.</summary>
    public static string Text(LessonFacts facts) => Encoding.UTF8.GetString(CanonicalInput.Write(facts));

    private static bool CanBeDrafted(Lesson lesson, Book book) => lesson.Readings.Any() && lesson.Readings.All(r => book.Find(r.Measure) is not null);

    private Task<LessonInput?> Find(LessonId lesson, CancellationToken stop) => db.LessonInputs.SingleOrDefaultAsync(i => i.LessonId == lesson, stop);

    private LessonInput Add(Lesson lesson)
    {
        var input = LessonInput.Of(lesson);
        db.LessonInputs.Add(input);
        return input;
    }
}

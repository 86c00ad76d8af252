using CoachOffice.Data;
using CoachOffice.Data.Bulk;
using CoachOffice.Domain;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Measuring;
using Microsoft.EntityFrameworkCore;
using Book = CoachOffice.Domain.Plans.Rulebook;

namespace CoachOffice.UseCases.Lessons.Imports;

/// <summary>The lessons a file's swings go to, within the import's transaction: one a day and club, new or picked.</summary>
public sealed class LessonsOfFile(OfficeDb db, LessonInputs inputs, TriedBefore tried, IManyRows many, INewIds ids)
{
    private const int AtOnce = 200;

    /// <summary>The lessons picked, each raised at once so that nobody saves it meanwhile, with the highest swing it has.</summary>
    internal async Task<Dictionary<LessonId, (Lesson Lesson, int Swings)>> Picked(ImportOrder order, CancellationToken stop)
    {
        var wanted = order.Into.Values.ToList();
        var lessons = await db.Lessons.Include(l => l.Takes).Where(l => l.StudentId == order.Student && wanted.Contains(l.Id)).ToListAsync(stop);
        foreach (var lesson in lessons) db.Entry(lesson).Property(l => l.Sheet).IsModified = true;
        await db.SaveChangesAsync(stop);
        return lessons.ToDictionary(l => l.Id, l => (l, l.Takes.Select(t => t.Swing).DefaultIfEmpty(0).Max()));
    }

    /// <summary>Identity of a new take.</summary>
    internal TakeId NewTake() => TakeId.From(ids.Next());

    /// <summary>Identity of a new reading.</summary>
    internal Guid NewReading() => ids.Next();

    /// <summary>A new one for a day and club.</summary>
    internal Lesson Begin(GroupTally group, ImportOrder order, NodaTime.Instant now) =>
        Lesson.Start(LessonId.From(ids.Next()), order.Student, order.Actor.Account!.Value, new LessonHeading(group.Day, group.Club), now);

    /// <summary>Keeps what drafts are made from, as saving a lesson does.</summary>
    internal async Task End(IReadOnlyCollection<FileLesson> lessons, Student student, Book book, CancellationToken stop)
    {
        var before = await tried.By(student.Id, stop);
        foreach (var some in lessons.Where(l => l.IsNew).Chunk(AtOnce)) await many.Add([.. some.Select(l => InputOf(l, student, before))], stop);
        foreach (var lesson in lessons.Where(l => !l.IsNew))
        {
            await db.Entry(lesson.Lesson).Collection(l => l.AllReadings).LoadAsync(stop);
            await inputs.Keep(lesson.Lesson, book, stop);
        }
    }

    private static LessonInput InputOf(FileLesson lesson, Student student, IReadOnlyList<TriedDrill> before)
    {
        var group = lesson.Group;
        var facts = new LessonFacts { AsOf = group.Day, Student = FactsOfStudent.On(student, group.Day), Club = group.Club, Readings = group.Values(), Tried = before };
        var input = LessonInput.Of(lesson.Lesson);
        input.Save(group.Club, LessonInputs.Text(facts));
        return input;
    }
}

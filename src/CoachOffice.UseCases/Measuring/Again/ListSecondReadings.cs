using CoachOffice.Data;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Measuring.Again;

/// <summary>Takes that wait to be read again, longest first.</summary>
public sealed class ListSecondReadings(OfficeDb db)
{
    private const int Most = 100;

    /// <summary>Up to a hundred.</summary>
    public async Task<IReadOnlyList<WaitingTake>> Waiting(CancellationToken stop = default) =>
        await Waits(db).OrderBy(w => w.AskedAt).Take(Most).ToListAsync(stop);

    internal static IQueryable<WaitingTake> Waits(OfficeDb db) =>
        from asked in db.SecondReadings
        where asked.ReadAt == null
        join take in db.Takes on asked.TakeId equals take.Id
        join lesson in db.Lessons on asked.LessonId equals lesson.Id
        join student in db.Students on lesson.StudentId equals student.Id
        where student.ErasedAt == null
        select new WaitingTake
        {
            Id = asked.Id,
            Lesson = lesson.Id,
            Take = take.Id,
            StudentName = student.GivenName + " " + student.FamilyName,
            HeldOn = lesson.HeldOn,
            Club = lesson.Club,
            View = take.View,
            Swing = take.Swing,
            AskedAt = asked.AskedAt,
        };
}

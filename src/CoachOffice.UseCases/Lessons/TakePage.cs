using CoachOffice.Data;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Media;
using CoachOffice.UseCases.Media;
using CoachOffice.UseCases.Plans;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Lessons;

/// <summary>Shows one take of a lesson.</summary>
public sealed class TakePage(OfficeDb db, PlanBooks books, MediaConsents consents)
{
    /// <summary>The take, or null when the lesson has no such take. Readings of measures the book no longer has are left out.</summary>
    public async Task<TakeView?> Of(LessonId lesson, TakeId take, CancellationToken stop = default)
    {
        var found = await (from t in db.Takes.AsNoTracking()
                           join l in db.Lessons on t.LessonId equals l.Id
                           join s in db.Students on l.StudentId equals s.Id
                           where t.Id == take && l.Id == lesson
                           select new { Take = t, l.Version, l.HeldOn, l.Club, Student = s }).SingleOrDefaultAsync(stop);
        if (found is null) return null;
        var book = await books.InForce(stop);
        var readings = await db.Readings.AsNoTracking().Where(r => r.TakeId == take && r.WithdrawnAt == null).ToListAsync(stop);
        return new TakeView
        {
            Id = take,
            LessonId = lesson,
            Version = found.Version,
            StudentId = found.Student.Id,
            StudentName = found.Student.FullName,
            HeldOn = found.HeldOn,
            Club = found.Club,
            View = found.Take.View,
            Swing = found.Take.Swing,
            FrameRate = found.Take.FrameRate,
            Clips = await consents.For(found.Student, stop) == MediaPermission.Given ? await ClipsOf(take, stop) : [],
            Readings = [.. readings.Select(r => (Reading: r, Measure: book.Find(r.Measure))).Where(r => r.Measure is not null).OrderBy(r => r.Measure!.Row)
                .Select(r => new TakeReading(r.Measure!, new Quantity(r.Reading.Value, r.Measure!.Unit), r.Reading.Instrument))],
        };
    }

    private Task<List<MediaId>> ClipsOf(TakeId take, CancellationToken stop) =>
        db.MediaItems.Where(m => m.TakeId == take && m.Kind == MediaKind.Clip).OrderBy(m => m.AddedAt).ThenBy(m => m.Id).Select(m => m.Id).ToListAsync(stop);
}

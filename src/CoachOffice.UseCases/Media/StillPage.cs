using CoachOffice.Data;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring.Landmarks;
using CoachOffice.Domain.Media;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Media;

/// <summary>Shows a still with its marks and what they say.</summary>
public sealed class StillPage(OfficeDb db, MediaConsents consents, StillValues values)
{
    /// <summary>The still of a lesson, or null when there is none.</summary>
    public async Task<StillView?> Of(LessonId lesson, MediaId id, CancellationToken stop = default)
    {
        var rows = await (from item in db.MediaItems.AsNoTracking()
                          join take in db.Takes.AsNoTracking() on item.TakeId equals take.Id
                          join held in db.Lessons.AsNoTracking() on item.LessonId equals held.Id
                          join student in db.Students.AsNoTracking() on item.StudentId equals student.Id
                          where item.Id == id && item.LessonId == lesson && item.Kind == MediaKind.Still
                          select new { item, take, held, student }).ToListAsync(stop);
        if (rows is not [var found] || found.item.Moment is not { } moment) return null;
        var shows = new StillShows(found.take.View, moment, found.take.Swing);
        return new StillView
        {
            Still = found.item,
            Shows = shows,
            Heading = new LessonHeading(found.held.HeldOn, found.held.Club, found.held.Kind),
            LessonVersion = found.held.Version,
            Student = found.student,
            Permission = await consents.For(found.student, stop),
            FrameRate = found.take.FrameRate,
            Values = await values.Of(found.item, new StillForm(shows, found.item.Marks ?? new StillMarks()), stop),
        };
    }
}

using CoachOffice.Data;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Measuring.Landmarks;
using CoachOffice.Domain.Media;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Media;

/// <summary>Which take a still belongs to. A new take is added beside the lesson, not to it: whoever has its sheet open must not be told that it changed.</summary>
public sealed class StillTakes(OfficeDb db, MediaDoor door)
{
    /// <summary>Adds a still's row and audit; the caller saves.</summary>
    public async Task<MediaItem> Add(NewStill add, StillContent content, Actor actor, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(add);
        var item = MediaItem.Still(MediaId.From(door.NewId()), add.Lesson, content, add.By, door.Now);
        var take = await For(add.Lesson.Id, add.Shows, stop);
        item.Mark(take.Id, add.Shows.Moment, await First(add, content, stop));
        db.MediaItems.Add(item);
        door.Note(actor, "still-added", item.Id, $"lesson:{add.Lesson.Id.Value}");
        return item;
    }

    /// <summary>The take that shows a swing from a view; a new one when there is none.</summary>
    public Task<Take> For(LessonId lesson, StillShows shows, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(shows);
        return For(lesson, shows.View, shows.Swing, stop);
    }

    /// <summary>The same of what moves.</summary>
    public async Task<Take> For(LessonId lesson, View view, int swing, CancellationToken stop)
    {
        if (await db.Takes.SingleOrDefaultAsync(t => t.LessonId == lesson && t.View == view && t.Swing == swing, stop) is { } known) return known;
        var take = Take.Of(TakeId.From(door.NewId()), lesson, view, swing, door.Now);
        db.Takes.Add(take);
        return take;
    }

    /// <summary>Another picture of the same size from the same place has its plumb line, scale, side and camera where the last one had them: a start that is mostly right, and is seen.</summary>
    private async Task<StillMarks> First(NewStill add, StillContent content, CancellationToken stop)
    {
        var last = await (from item in db.MediaItems.AsNoTracking()
                          join take in db.Takes on item.TakeId equals take.Id
                          where item.LessonId == add.Lesson.Id && take.View == add.Shows.View && item.Width == content.Width && item.Height == content.Height
                          orderby item.AddedAt descending, item.Id descending
                          select item.Marks).FirstOrDefaultAsync(stop);
        return last is null ? new StillMarks { Toward = add.Toward } : last with { Marks = [.. last.Marks.Where(m => m.Landmark <= Landmark.LengthEnd)] };
    }
}

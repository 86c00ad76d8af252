using CoachOffice.Data;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Measuring.Landmarks;
using CoachOffice.Domain.Media;
using CoachOffice.UseCases.Plans;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Media;

/// <summary>Reads a still by its marks, and by those of an earlier moment of the same view in the same lesson.</summary>
public sealed class StillValues(OfficeDb db, PlanBooks books)
{
    /// <summary>Every measure of the rulebook this still can speak of, in the order of the table.</summary>
    public async Task<IReadOnlyList<StillValue>> Of(MediaItem still, StillForm form, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(still);
        ArgumentNullException.ThrowIfNull(form);
        var (shows, book) = (form.Shows, await books.InForce(stop));
        var others = await (from item in db.MediaItems.AsNoTracking()
                            join take in db.Takes on item.TakeId equals take.Id
                            where item.LessonId == still.LessonId && item.Id != still.Id && take.View == shows.View
                            select new Earlier(item, take.Swing)).ToListAsync(stop);
        var readings = PictureReadings.Of(new MarkedStill(shows.View, shows.Moment, form.Marks), moment => Best(others, shows, moment) is { } best ? new MarkedStill(shows.View, moment, best.Item.Marks!) : null);
        return
        [
            .. from reading in readings
               let measure = book.Find(reading.Measure.Id)
               where measure is not null && measure.Unit == reading.Measure.Unit
               select new StillValue(measure, reading, reading.Measure.Against is { } moment ? Best(others, shows, moment)?.Swing : null),
        ];
    }

    // The same swing if it can be; else the last that was added.
    private static Earlier? Best(List<Earlier> others, StillShows shows, Moment moment) =>
        others.Where(o => o.Item.Moment == moment && o.Item.Marks is not null).OrderByDescending(o => o.Swing == shows.Swing).ThenByDescending(o => o.Item.AddedAt).ThenByDescending(o => o.Item.Id.Value).FirstOrDefault();

    private sealed record Earlier(MediaItem Item, int Swing);
}

using CoachOffice.Data;
using CoachOffice.Domain.Lessons;
using CoachOffice.Drafting.Replay;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>Asks the database which lessons an edit may reach. Readings that were taken back count too: a draft made before may rest on them.</summary>
public sealed class ReachedLessons(OfficeDb db)
{
    /// <summary>Their ids, newest first.</summary>
    public async Task<IReadOnlyList<LessonId>> By(Reach reach, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(reach);
        var found = new HashSet<LessonId>();
        if (reach.Whole.Count > 0) await Add(found, db.LessonInputs.Select(i => i.LessonId), stop);
        else foreach (var values in reach.Values) await Add(found, Holding(values), stop);
        return [.. found.OrderByDescending(l => l.Value)];
    }

    /// <summary>A mean beyond an edge has a reading beyond it.</summary>
    private IQueryable<LessonId> Holding(ReachedValues values)
    {
        var readings = db.Readings.Where(r => r.Measure == values.Measure);
        if (values.Outside is { Low: { } low, High: { } high }) readings = readings.Where(r => r.Value < low || r.Value > high);
        else if (values.Outside is { Low: { } floor }) readings = readings.Where(r => r.Value < floor);
        else if (values.Outside is { High: { } ceiling }) readings = readings.Where(r => r.Value > ceiling);
        var inputs = values.Club is { } club ? db.LessonInputs.Where(i => i.Club == club) : db.LessonInputs;
        return readings.Join(inputs, r => r.LessonId, i => i.LessonId, (r, i) => i.LessonId).Distinct();
    }

    private static async Task Add(HashSet<LessonId> found, IQueryable<LessonId> lessons, CancellationToken stop)
    {
        await foreach (var lesson in lessons.AsAsyncEnumerable().WithCancellation(stop)) found.Add(lesson);
    }
}

using CoachOffice.Data.Bulk;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using NodaTime;

namespace CoachOffice.UseCases.Lessons.Imports;

/// <summary>From rows to takes and readings, written some hundred swings at a time so that memory stays level.</summary>
internal sealed class SwingBatch(ImportOrder order, LessonsOfFile lessons, IManyRows many, Instant now, IReadOnlyDictionary<LessonId, (Lesson Lesson, int Swings)> picked)
{
    private const int Most = 500;

    private readonly Dictionary<GroupTally, FileLesson> _lessons = [];
    private readonly List<Lesson> _fresh = [];
    private readonly List<Take> _takes = [];
    private readonly List<Reading> _readings = [];

    public IReadOnlyCollection<FileLesson> Lessons => _lessons.Values;

    /// <summary>Keeps all rows, and says what the file came to.</summary>
    public async Task<FileTally> Keep(FileReading reading, ImportRun run, CancellationToken stop)
    {
        var tally = new FileTally(reading.Columns);
        var rows = 0;
        foreach (var (line, row) in reading.Rows())
        {
            rows++;
            if (tally.Take(row, line) is { } group) Add(LessonOf(group), row.Values, reading.Columns);
            if (_takes.Count < Most) continue;
            await Write(stop);
            run.Wrote(rows);
        }

        await Write(stop);
        run.Wrote(rows);
        return tally;
    }

    private FileLesson LessonOf(GroupTally group)
    {
        if (_lessons.TryGetValue(group, out var known)) return known;
        if (order.Into.TryGetValue(DeviceGroup.KeyOf(group.Day, group.Club), out var wanted) && picked.TryGetValue(wanted, out var there))
            return _lessons[group] = new FileLesson(there.Lesson, group, false, there.Swings);
        var lesson = lessons.Begin(group, order, now);
        _fresh.Add(lesson);
        return _lessons[group] = new FileLesson(lesson, group, true, 0);
    }

    private void Add(FileLesson to, double?[] values, IReadOnlyList<RowMeasure> columns)
    {
        var take = Take.Of(lessons.NewTake(), to.Lesson.Id, View.Device, to.Swing, now);
        _takes.Add(take);
        for (var i = 0; i < values.Length; i++)
        {
            if (values[i] is not { } value) continue;
            var measure = columns[i].Measure;
            _readings.Add(Reading.Take(lessons.NewReading(), take, new TakenReading { Measure = measure.Id, Value = new Quantity(value, measure.Unit), Swing = to.Swing, View = View.Device, Instrument = Instrument.Radar }, now));
        }
    }

    private async Task Write(CancellationToken stop)
    {
        stop.ThrowIfCancellationRequested();
        await many.Add(_fresh, stop);
        await many.Add(_takes, stop);
        await many.Add(_readings, stop);
        _fresh.Clear();
        _takes.Clear();
        _readings.Clear();
    }
}

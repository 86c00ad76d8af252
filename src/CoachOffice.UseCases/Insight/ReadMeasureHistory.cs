using CoachOffice.Data;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Lessons;
using CoachOffice.UseCases.Plans;
using Microsoft.EntityFrameworkCore;
using Book = CoachOffice.Domain.Plans.Rulebook;

namespace CoachOffice.UseCases.Insight;

/// <summary>Reads what was measured of a student over time, each value held against what was wanted on its day by the book in force.</summary>
public sealed class ReadMeasureHistory(OfficeDb db, PlanBooks books, KeptHistories kept)
{
    // Every one of these rows counts its saves up, so their sums never come back to what they were.
    private static readonly CompiledQuery<StudentId, HistoryStamp> Stamps = new((db, id) =>
        db.Students.Where(s => s.Id == id).Select(s => new HistoryStamp
        {
            Student = s.Id,
            Details = s.Version,
            Lessons = db.Lessons.Where(l => l.StudentId == id).Sum(l => l.Version),
            Looks = db.Retests.Where(r => r.StudentId == id).Sum(r => r.Version),
            Plans = db.Plans.Where(p => p.StudentId == id).Sum(p => p.Version),
            Book = db.BooksInForce.Select(b => b.Sha256).Single(),
        }));

    // Ten years of weekly lessons.
    private const int Most = 500;

    /// <summary>All measures that were read; null when there is no such student.</summary>
    public async Task<MeasureHistories?> Of(StudentId id, CancellationToken stop = default) =>
        await StampOf(id, stop) is { } stamp ? await At(stamp, stop) : null;

    /// <summary>The measures a stamp was just given for.</summary>
    public async Task<MeasureHistories?> At(HistoryStamp stamp, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(stamp);
        return kept.Find(stamp) ?? (await Read(stamp.Student, stop) is { } read ? kept.Keep(stamp, read) : null);
    }

    /// <summary>Changes whenever a drawing of the student's measures could: with the student, a lesson, a look, a plan or the book in force. Null when there is no such student.</summary>
    public async Task<HistoryStamp?> StampOf(StudentId id, CancellationToken stop = default) => (await Stamps.Rows(db, id, stop)) is [var stamp] ? stamp : null;

    private async Task<MeasureHistories?> Read(StudentId id, CancellationToken stop)
    {
        if (await db.Students.AsNoTracking().SingleOrDefaultAsync(s => s.Id == id, stop) is not { } student) return null;
        var book = await books.InForce(stop);
        var lessons = await db.Lessons.AsNoTracking().Where(l => l.StudentId == id).OrderByDescending(l => l.HeldOn).ThenByDescending(l => l.CreatedAt).Take(Most)
            .Include(l => l.AllReadings.Where(r => r.WithdrawnAt == null)).AsSplitQuery().ToListAsync(stop);
        var verdicts = await Verdicts(id, stop);
        var work = await Work(id, stop);
        var points = lessons.OrderBy(l => l.HeldOn).ThenBy(l => l.CreatedAt).SelectMany(l => Points(l, student, book, verdicts));
        return new MeasureHistories(student.FullName,
        [
            .. points.GroupBy(p => (p.Finding.Measure.Id, p.Lesson.Club)).Select(g => History([.. g], work))
                .OrderBy(h => h.Work.Count == 0).ThenBy(h => h.Measure.Row).ThenBy(h => h.Club),
        ]);
    }

    private static IEnumerable<Graded> Points(Lesson lesson, Student student, Book book, ILookup<LessonId, Judged> verdicts)
    {
        var known = lesson.AllReadings.Where(r => book.Find(r.Measure) is not null).ToList();
        var facts = new LessonFacts
        {
            AsOf = lesson.HeldOn,
            Student = FactsOfStudent.On(student, lesson.HeldOn),
            Club = lesson.Club,
            Readings = LessonValues.Of(known, m => book.Find(m)!.Unit),
        };
        return LessonGrading.Grade(book, facts).Select(f => new Graded(lesson, f, verdicts[lesson.Id].FirstOrDefault(v => v.Measure == f.Measure.Id)?.Verdict));
    }

    private static MeasureHistory History(IReadOnlyList<Graded> read, ILookup<MeasureId, WorkedOn> work)
    {
        var last = read[^1];
        return new MeasureHistory
        {
            Measure = last.Finding.Measure,
            Club = last.Lesson.Club,
            Wanted = last.Finding.Range,
            Points = [.. read.Select(r => r.Point)],
            Work = [.. work[last.Finding.Measure.Id].OrderBy(w => w.From)],
            Trend = Trend.Of(read.Select(r => (r.Lesson.HeldOn, r.Finding.Value.Value))),
        };
    }

    private async Task<ILookup<LessonId, Judged>> Verdicts(StudentId id, CancellationToken stop)
    {
        var judged = await db.Retests.AsNoTracking().Where(r => r.StudentId == id && r.Status == RetestStatus.Completed && r.LessonId != null).ToListAsync(stop);
        return judged.Where(r => r.Verdict is not null).ToLookup(r => r.LessonId!.Value, r => new Judged(FaultId.Parse(r.Fault).Measure, r.Verdict!));
    }

    private async Task<ILookup<MeasureId, WorkedOn>> Work(StudentId id, CancellationToken stop)
    {
        var plans = await db.Plans.AsNoTracking().Include(p => p.Stages).Where(p => p.StudentId == id && p.Status != PlanStatus.EnteredInError).ToListAsync(stop);
        return plans.SelectMany(p => p.Stages).Where(s => s.StartedOn is not null)
            .ToLookup(s => FaultId.Parse(s.Fault).Measure, s => new WorkedOn(s.StartedOn!.Value, s.EndedOn));
    }

    private sealed record Judged(MeasureId Measure, KeptVerdict Verdict);

    private sealed record Graded(Lesson Lesson, Finding Finding, KeptVerdict? Verdict)
    {
        public HistoryPoint Point => new()
        {
            Lesson = Lesson.Id,
            On = Lesson.HeldOn,
            Kind = Lesson.Kind,
            Value = Finding.Value.Value,
            StandardError = Finding.StandardError,
            Readings = Finding.Readings,
            Grade = Finding.Grade,
            Side = Finding.Side,
            Verdict = Verdict,
        };
    }
}

using CoachOffice.Data;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Lessons;
using CoachOffice.UseCases.Plans;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Measuring;

/// <summary>Shows a re-test to be recorded, or its verdict.</summary>
public sealed class RetestPage(OfficeDb db, Baselines baselines, ReadPractice practice)
{
    /// <summary>The re-test, or null when there is none or its student was erased.</summary>
    public async Task<RetestView?> Of(Guid retest, CancellationToken stop = default)
    {
        var look = await db.Retests.AsNoTracking().SingleOrDefaultAsync(r => r.Id == retest, stop);
        if (look is null) return null;
        var plan = await db.Plans.AsNoTracking().Include(p => p.Stages).SingleAsync(p => p.Id == look.PlanId, stop);
        var student = await db.Students.AsNoTracking().SingleAsync(s => s.Id == look.StudentId, stop);
        return student.ErasedAt is null ? await View(look, plan, student, stop) : null;
    }

    private async Task<RetestView> View(Retest look, Plan plan, Student student, CancellationToken stop)
    {
        var fault = FaultId.Parse(look.Fault);
        var baseline = await baselines.Of(plan.DraftId, fault, stop);
        var stage = plan.Stages.Single(s => s.Id == look.StageId);
        return new RetestView
        {
            Id = look.Id,
            Version = look.Version,
            PlanId = plan.Id,
            PlanStatus = plan.Status,
            StudentId = student.Id,
            StudentName = student.FullName,
            Club = baseline.Facts.Club,
            Fault = fault,
            FaultName = FaultWords.Measure(baseline.Book, fault),
            IsSecondLook = look.IsSecondLook,
            DueOn = look.DueOn,
            Status = look.Status,
            LessonOn = await Taught(plan, stop),
            Before = baseline.Before,
            Range = baseline.Range,
            Gate = stage.Gate,
            StageStatus = stage.Status,
            Begun = plan.Stages.FirstOrDefault(s => s.Fault == look.Fault && s.Status == StageStatus.Current && s.Id != stage.Id)?.Stage,
            NextLookOn = await NextLook(look, stop),
            Fields = await Fields(baseline, look, plan, stop),
            Answer = look.Answer,
            AnsweredOn = look.AnsweredOn,
            Verdict = look.Verdict,
            AnsweredBy = look.LessonId,
        };
    }

    private Task<LocalDate> Taught(Plan plan, CancellationToken stop) =>
        db.Lessons.Where(l => l.Id == plan.LessonId).Select(l => l.HeldOn).SingleAsync(stop);

    private Task<LocalDate?> NextLook(Retest look, CancellationToken stop) =>
        db.Retests.Where(r => r.PlanId == look.PlanId && r.Fault == look.Fault && r.Status == RetestStatus.Ready && r.Id != look.Id)
            .OrderBy(r => r.DueOn).Select(r => (LocalDate?)r.DueOn).FirstOrDefaultAsync(stop);

    private async Task<IReadOnlyList<SheetField>> Fields(Baseline baseline, Retest look, Plan plan, CancellationToken stop)
    {
        var units = (await practice.Now(stop))?.Units ?? UnitSystem.Metric;
        var lesson = await db.Lessons.AsNoTracking().Include(l => l.AllReadings).SingleAsync(l => l.Id == plan.LessonId, stop);
        var answer = look.LessonId is { } id ? await db.Lessons.AsNoTracking().Include(l => l.AllReadings).SingleAsync(l => l.Id == id, stop) : null;
        var sheet = new LessonSheet(baseline.Book, new GradingContext(baseline.Book, baseline.Facts), units, EarlierReading.Of(lesson));
        var first = baseline.Measure.Derived is { } derived && baseline.Facts.Readings.All(r => r.Measure != baseline.Measure.Id) ? derived.Parts : [baseline.Measure.Id];
        var measures = first.Concat(baseline.Facts.Readings.Select(r => r.Measure)).Distinct().Select(baseline.Book.Find).OfType<Measure>();
        return [.. measures.Select(m => sheet.Field(m, [.. answer?.Readings ?? []]))];
    }
}

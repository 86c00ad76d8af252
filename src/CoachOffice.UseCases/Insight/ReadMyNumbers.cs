using CoachOffice.Data;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Plans;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Insight;

/// <summary>What a student may see of their own measures: those their plan works on, with the club it was drafted for.</summary>
public sealed class ReadMyNumbers(OfficeDb db, ReadMeasureHistory history)
{
    /// <summary>In the plan's order; null when the plan is shown to nobody.</summary>
    public async Task<IReadOnlyList<MeasureHistory>?> For(LinkPass pass, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(pass);
        if (await Shown(pass, stop) is not var (measures, club)) return null;
        if (await history.Of(pass.StudentId, stop) is not { } all) return null;
        return [.. measures.SelectMany(id => all.Measures.Where(m => m.Measure.Id == id && m.Club == club))];
    }

    /// <summary>Changes whenever one of the drawings could; null when the plan is shown to nobody.</summary>
    public async Task<HistoryStamp?> StampFor(LinkPass pass, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(pass);
        return await Shown(pass, stop) is null ? null : await history.StampOf(pass.StudentId, stop);
    }

    private async Task<(IReadOnlyList<MeasureId> Measures, Club Club)?> Shown(LinkPass pass, CancellationToken stop)
    {
        var plan = await db.Plans.AsNoTracking().Include(p => p.Stages).SingleOrDefaultAsync(p => p.Id == pass.PlanId && p.StudentId == pass.StudentId && p.ApprovedAt != null, stop);
        if (plan is null || await db.Students.AnyAsync(s => s.Id == pass.StudentId && s.ErasedAt != null, stop)) return null;
        var club = await db.Lessons.Where(l => l.Id == plan.LessonId).Select(l => l.Club).SingleAsync(stop);
        return ([.. plan.Stages.Where(s => s.Status != StageStatus.Skipped).Select(s => FaultId.Parse(s.Fault).Measure).Distinct()], club);
    }
}

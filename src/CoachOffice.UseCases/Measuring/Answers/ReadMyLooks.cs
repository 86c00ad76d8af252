using CoachOffice.Data;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Lessons;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Measuring.Answers;

/// <summary>What a student is asked to read again now, behind the plan's private link.</summary>
public sealed class ReadMyLooks(OfficeDb db, Baselines baselines, ReadPractice practice, PracticeClock clock)
{
    /// <summary>By due day; none while the plan is paused or over, null when there is no such plan.</summary>
    public async Task<IReadOnlyList<MyLook>?> For(LinkPass pass, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(pass);
        var plan = await db.Plans.AsNoTracking().SingleOrDefaultAsync(p => p.Id == pass.PlanId && p.StudentId == pass.StudentId, stop);
        if (plan is null) return null;
        if (plan.Status is not (PlanStatus.Active or PlanStatus.Completed)) return [];
        var today = await clock.Today(stop);
        var due = await db.Retests.AsNoTracking().Where(r => r.PlanId == plan.Id && r.Status == RetestStatus.Ready && r.DueOn <= today && (plan.Status == PlanStatus.Active || r.IsSecondLook))
            .OrderBy(r => r.DueOn).ThenBy(r => r.Id).ToListAsync(stop);
        var units = (await practice.Now(stop))?.Units ?? UnitSystem.Metric;
        var looks = new List<MyLook>();
        foreach (var look in due) looks.Add(Of(look, await baselines.Of(plan.DraftId, FaultId.Parse(look.Fault), stop), units));
        return looks;
    }

    private static MyLook Of(Retest look, Baseline baseline, UnitSystem units) => new()
    {
        Id = look.Id,
        Measure = baseline.Measure,
        Unit = ShownUnits.For(baseline.Measure.Unit, units),
        Instrument = baseline.Before.Instrument,
        FrameRate = baseline.Before.FrameRate,
        IsSecondLook = look.IsSecondLook,
        CanBeTyped = baseline.Measure.Derived is null,
        AnsweredAt = look.AnsweredAt,
        AnsweredOn = look.AnsweredOn,
        Answer = look.Answer,
    };
}

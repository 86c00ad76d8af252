using CoachOffice.Data;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.FollowUps;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Plans;

/// <summary>Shows a plan to the student. A draft is never shown.</summary>
public sealed class PlanSheet(OfficeDb db, PlanBooks books, PracticeClock clock)
{
    private const int PractisedShown = 20;

    /// <summary>The sheet, or null when there is no such plan, it was never approved or its student was erased.</summary>
    public async Task<PlanSheetView?> For(PlanId plan, CancellationToken stop = default)
    {
        var found = await db.Plans.AsNoTracking().Include(p => p.Stages).SingleOrDefaultAsync(p => p.Id == plan && p.ApprovedAt != null, stop);
        if (found is null) return null;
        var student = await db.Students.AsNoTracking().SingleAsync(s => s.Id == found.StudentId, stop);
        if (student.ErasedAt is not null) return null;
        var practice = await db.Practices.AsNoTracking().SingleAsync(stop);
        var draft = DraftJson.Read(await db.StoredDrafts.Where(d => d.Id == found.DraftId).Select(d => d.Json).SingleAsync(stop));
        var today = await clock.Today(stop);
        return new PlanSheetView
        {
            Id = found.Id,
            StudentId = student.Id,
            Student = student.GivenName,
            IsMinor = student.BirthDate is { } born && Ages.IsMinor(born, today),
            Practice = practice.Name,
            Coach = found.ApprovedBy ?? "",
            EmergencyNumber = practice.EmergencyNumber,
            Status = found.Status,
            IsPaused = found.Status == PlanStatus.OnHold || found.RestartsOn > today,
            PausedForPain = found.Status == PlanStatus.OnHold && found.HoldReason == AfterCheckIn.PainReport,
            RestartsOn = found.Status == PlanStatus.Active && found.RestartsOn > today ? found.RestartsOn : null,
            Message = CleanText.Paragraphs(found.Message),
            IfThen = found.IfThen,
            Reasons = [.. draft.Focus.OrderBy(f => f.Order).Select(f => f.Because)],
            Stages = await Stages(found, stop),
            Cautions = [.. draft.Cautions.Select(c => c.Text)],
            LookOn = await LookOn(found, stop),
            Today = today,
            Practised = await Practised(plan, stop),
        };
    }

    private async Task<IReadOnlyList<SheetStage>> Stages(Plan plan, CancellationToken stop)
    {
        var book = await books.Of(plan.DraftId, stop);
        return
        [
            .. plan.Stages.Where(s => s.Status != StageStatus.Skipped).Select(s => new SheetStage
            {
                Id = s.Id,
                FaultName = FaultWords.Measure(book, s.Content.Fault),
                Stage = s.Stage,
                Status = s.Status,
                Drills = s.Drills,
                Gate = s.Gate.Text,
                CountsDays = s.Gate.Kind == GateKind.Count,
                DueOn = s.DueOn,
            }),
        ];
    }

    private async Task<LocalDate?> LookOn(Plan plan, CancellationToken stop)
    {
        if (plan.Status is not (PlanStatus.Active or PlanStatus.Completed)) return null;
        var looks = await db.Retests.Where(r => r.PlanId == plan.Id && r.Status == RetestStatus.Ready).OrderBy(r => r.DueOn).Select(r => r.DueOn).Take(1).ToListAsync(stop);
        return looks is [var first] ? first : null;
    }

    private Task<List<SheetPractice>> Practised(PlanId plan, CancellationToken stop) =>
        db.CheckIns.Where(c => c.PlanId == plan && c.Minutes > 0).OrderByDescending(c => c.PracticedOn).ThenByDescending(c => c.At)
            .Take(PractisedShown).Select(c => new SheetPractice(c.PracticedOn, c.Minutes)).ToListAsync(stop);
}

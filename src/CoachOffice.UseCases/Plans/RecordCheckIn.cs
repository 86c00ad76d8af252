using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Plans;

/// <summary>Takes a practice note; a pain report pauses the plan and its messages at once. The same form twice is one note.</summary>
public sealed class RecordCheckIn(OfficeDb db, AuditTrail trail, PracticeDays days, AfterCheckIn after)
{
    // A coach may be changing the plan at this very moment; a report is worth another try.
    private const int Tries = 5;

    /// <summary>What came of it, or what is wrong with the form.</summary>
    public async Task<Outcome<CheckInResult>> From(CheckInForm form, LinkPass pass, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(form);
        ArgumentNullException.ThrowIfNull(pass);
        var wrong = CheckInCheck.Of(form, await days.Today(stop));
        if (wrong.Count > 0) return Outcome<CheckInResult>.Refused(wrong);
        for (var attempt = 0; attempt < Tries; attempt++)
        {
            if (await Try(form, pass, stop) is { } outcome) return outcome;
            db.ChangeTracker.Clear();
        }

        throw new InvalidOperationException("A check-in found its plan changed five times in a row.");
    }

    private async Task<Outcome<CheckInResult>?> Try(CheckInForm form, LinkPass pass, CancellationToken stop)
    {
        await using var transaction = await db.Database.BeginTransactionAsync(stop);
        var plan = await db.Plans.Include(p => p.Stages).Include(p => p.Changes).SingleOrDefaultAsync(p => p.Id == pass.PlanId && p.StudentId == pass.StudentId, stop);
        if (plan is null || plan.Status == PlanStatus.Draft) return new Refusal("plan-not-found", "There is no such plan.");
        var kept = await db.CheckIns.AsNoTracking().SingleOrDefaultAsync(c => c.Id == form.Id, stop);
        if (kept is not null) return kept.PlanId == plan.Id ? await ResultOf(plan, kept, false, stop) : new Refusal("form-used", "This form was used already; open the page again.");
        if (Closed(form, plan) is { } closed) return closed;
        var note = CheckInCheck.Make(form, plan, days.Now, await days.Today(stop));
        db.CheckIns.Add(note);
        trail.Add(Actor.Student, note.Pain ? "pain-reported" : "checked-in", AuditSubject.Of(plan.Id), $"check-in:{note.Id:N}");
        if (await db.TrySave(stop) != Saved.Yes) return null;
        var opened = await after.Follow(plan, note, stop);
        if (await db.TrySave(stop) != Saved.Yes) return null;
        await transaction.CommitAsync(stop);
        return await ResultOf(plan, note, opened, stop);
    }

    private static Refusal? Closed(CheckInForm form, Plan plan) =>
        CheckInCheck.IsPain(form) || plan.Status == PlanStatus.Active ? null
        : plan.Status == PlanStatus.OnHold ? new("plan-on-hold", "This plan is paused; your coach restarts it. You can still report pain here.")
        : new("plan-over", "This plan is over. Your coach has the next one.");

    private async Task<CheckInResult> ResultOf(Plan plan, CheckIn note, bool opened, CancellationToken stop)
    {
        var number = await db.Practices.Select(p => p.EmergencyNumber).SingleOrDefaultAsync(stop) ?? "112";
        var looks = await db.Retests.Where(r => r.PlanId == plan.Id && r.Status == RetestStatus.Ready && !r.IsSecondLook).OrderBy(r => r.DueOn).Select(r => r.DueOn).Take(1).ToListAsync(stop);
        return new CheckInResult(note.Pain, note.Emergency, number, opened, plan.Status == PlanStatus.Active && looks is [var look] ? look : null);
    }
}

using CoachOffice.Data;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.SeedDemo.Swings;
using CoachOffice.UseCases.Measuring;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.SeedDemo.Year;

/// <summary>Coaches read numbers again when they are due, some students later than asked, some not at all.</summary>
internal sealed class RetestHour(Scene scene, IReadOnlyList<StudentLife> lives)
{
    private const int LongAgo = 90;

    /// <summary>All that are taken on a day.</summary>
    public async Task Pass(LocalDate day, CancellationToken stop)
    {
        foreach (var due in await scene.Office.Read(db => Due(db, day, stop)))
        {
            var life = lives.Single(l => l.Id == due.Look.StudentId);
            if (IsTaken(life, due, day)) await Take(life, due.Look, day, stop);
        }
    }

    private bool IsTaken(StudentLife life, DueLook due, LocalDate day)
    {
        var (look, persona, before) = (due.Look, life.Persona, scene.Calendar.Before(day));
        if (before < persona.NoRetestsInLast || (look.IsSecondLook && before < persona.NoSecondLooksInLast)) return false;
        if (due.MayWait && before > LongAgo && life.Seat % 2 == 0) return false;
        return !life.IsTaughtOn(day) && Period.Between(look.DueOn, day, PeriodUnits.Days).Days >= persona.RetestsLateBy && before > 0;
    }

    private async Task Take(StudentLife life, Retest look, LocalDate day, CancellationToken stop)
    {
        var measure = scene.Book.Find(FaultId.Parse(look.Fault).Measure)!;
        var swings = life.Persona.RetestSwings is { } few ? few : Sheet.SwingsFor(measure, 6);
        var form = new RetestForm
        {
            RetestId = look.Id,
            Version = look.Version,
            HeldOn = day,
            Entries = [Sheet.Entry(measure, life.Swing.Take(measure, swings))],
            Observations = look.IsSecondLook ? "Second look, no warm-up with the drill." : "Camera on the same marks as in the lesson.",
        };
        await scene.Office.Must((RecordRetest record) => record.With(form, life.Coach, stop));
    }

    private static Task<List<DueLook>> Due(OfficeDb db, LocalDate day, CancellationToken stop) =>
        (from look in db.Retests
         join plan in db.Plans on look.PlanId equals plan.Id
         join student in db.Students on look.StudentId equals student.Id
         where look.Status == RetestStatus.Ready && look.DueOn <= day && student.ArchivedAt == null
             && (plan.Status == PlanStatus.Active || (plan.Status == PlanStatus.Completed && look.IsSecondLook))
         orderby look.DueOn, look.Id
         select new DueLook(look, look.IsSecondLook && plan.Status == PlanStatus.Active)).AsNoTracking().ToListAsync(stop);

    // In the past every other second look was never taken; of a completed plan they all were.
    private sealed record DueLook(Retest Look, bool MayWait);
}

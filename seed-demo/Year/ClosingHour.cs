using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Ledger;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Bookings.Visits;
using CoachOffice.UseCases.FollowUps;
using CoachOffice.UseCases.FollowUps.ByTime;
using CoachOffice.UseCases.Ledger.Documents;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.SeedDemo.Year;

/// <summary>The last hour before the office is opened: some students say that they are coming, one coach asks for the morning list, a receipt is cut off on its way, and what time brings is written.</summary>
internal sealed class ClosingHour(Scene scene)
{
    private const int SayYes = 3;

    /// <summary>Lets it pass.</summary>
    public async Task Pass(CancellationToken stop)
    {
        var now = scene.Calendar.At(scene.Calendar.Today, new NodaTime.LocalTime(20, 0));
        var coming = await scene.Office.Read(db => db.Bookings.AsNoTracking().Include(b => b.Seats).Where(b => b.Starts > now && b.Status == BookingStatus.Confirmed).OrderBy(b => b.Starts).ThenBy(b => b.Id).Take(SayYes).ToListAsync(stop));
        foreach (var booking in coming)
        {
            var seat = booking.Seats.OrderBy(s => s.Id.Value).First(s => s.Counts);
            await scene.Office.Do((SayComing say) => say.To(booking.Id, new VisitPass(seat.StudentId, Guid.Empty), stop));
        }

        await scene.Office.Must((ChooseMorningList choose) => choose.Set(true, scene.Cast.Second, stop));
        await CutOff(stop);
        await scene.Office.Do((WriteByTime write) => write.Once(stop));
    }

    // What has to do with money is not sent twice by guess: somebody has to ask.
    private async Task CutOff(CancellationToken stop)
    {
        var paid = await scene.Office.Read(db => db.LedgerEntries.Where(e => e.Kind == EntryKind.Payment && db.Payers.Any(p => p.Id == e.PayerId && p.Email != "" && p.ErasedAt == null))
            .OrderByDescending(e => e.At).ThenByDescending(e => e.Id).Select(e => e.Id).FirstAsync(stop));
        var receipt = await scene.Office.Must((IssueReceipt issue) => issue.For(paid, scene.Cast.Desk, stop));
        await scene.Office.Must((MailDocument mail) => mail.Send(receipt, scene.Cast.Desk, stop));
        scene.Office.Door.BreaksOff = true;
        await scene.Office.Do((SweepMessages sweep) => sweep.Once(stop));
        scene.Office.Door.BreaksOff = false;
    }
}

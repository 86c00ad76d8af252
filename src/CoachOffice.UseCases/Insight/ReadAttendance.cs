using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.FollowUps;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Insight;

/// <summary>Counts lessons that students missed over the past year, by whether a reminder had gone out before. It is an observation: who is reminded differs from who is not.</summary>
public sealed class ReadAttendance(OfficeDb db, PracticeClock clock)
{
    // A reminder goes a week ahead at most; whoever moves a lesson may leave it longer.
    private static readonly Duration LongestBefore = Duration.FromDays(31);

    /// <summary>The counts, or why not.</summary>
    public async Task<Outcome<AttendanceView>> Of(Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayTeach) return NotAllowed.To("see how many lessons were missed");
        var (last, zone) = (await clock.Today(stop), await clock.Zone(stop));
        var first = last.PlusYears(-1).PlusDays(1);
        var marked = await Marked(new Interval(zone.AtStartOfDay(first).ToInstant(), clock.Now), stop);
        Missed Of(Func<MarkedSeat, bool> which) => new(marked.Count(m => which(m) && m.Missed), marked.Count(which));
        return new AttendanceView(first, last, Of(_ => true), Of(m => m.Reminded), Of(m => !m.Reminded), Of(m => m is { Reminded: true, SaidYes: true }));
    }

    private async Task<IReadOnlyList<MarkedSeat>> Marked(Interval time, CancellationToken stop)
    {
        var (from, until, earliest) = (time.Start, time.End, time.Start - LongestBefore);
        var seats = await (
            from booking in db.Bookings
            where booking.Starts >= @from && booking.Starts < until
            from seat in booking.Seats
            where seat.Status == SeatStatus.Attended || seat.Status == SeatStatus.NoShow
            select new { booking.Id, booking.Starts, seat.StudentId, seat.Status, seat.ComingAt }).ToListAsync(stop);
        var sent = await db.Messages.Where(m => m.Kind == MessageKind.LessonReminder && m.State == MessageState.Sent && m.DueAt >= earliest && m.StudentId != null && m.SubjectId != null)
            .Select(m => new { m.SubjectId, m.StudentId, m.SentAt }).ToListAsync(stop);
        var reminders = sent.ToLookup(m => (m.SubjectId!.Value, m.StudentId!.Value), m => m.SentAt);
        return [.. seats.Select(s => new MarkedSeat(s.Status == SeatStatus.NoShow, reminders[(s.Id.Value, s.StudentId)].Any(at => at < s.Starts), s.ComingAt is not null))];
    }

    private sealed record MarkedSeat(bool Missed, bool Reminded, bool SaidYes);
}

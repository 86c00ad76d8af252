using CoachOffice.Data;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Bookings.Visits;

/// <summary>What a student waits for.</summary>
public sealed class ReadWaiting(OfficeDb db, PracticeClock clock)
{
    /// <summary>In the order they joined; offers are lessons by then and not among them.</summary>
    public async Task<IReadOnlyList<WaitingView>> Of(VisitPass pass, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(pass);
        var (student, today) = (pass.StudentId, await clock.Today(stop));
        var found = await (from w in db.WaitingPlaces
                           join o in db.Offerings on w.OfferingId equals o.Id
                           where w.StudentId == student && w.Status == WaitingStatus.Waiting && w.LastDay >= today
                           orderby w.JoinedAt, w.Id
                           select new { w.Id, o.Name, w.CoachId, w.BookingId, w.FirstDay, w.LastDay }).ToListAsync(stop);
        var coaches = found.Where(w => w.CoachId is not null).Select(w => w.CoachId!.Value.Value).Distinct().ToList();
        var names = coaches.Count == 0 ? [] : await db.Users.Where(u => coaches.Contains(u.Id)).ToDictionaryAsync(u => u.Id, u => u.DisplayName, stop);
        var lessons = found.Where(w => w.BookingId is not null).Select(w => w.BookingId!.Value).ToList();
        var starts = lessons.Count == 0 ? [] : await db.Bookings.Where(b => lessons.Contains(b.Id)).ToDictionaryAsync(b => b.Id, b => b.LocalStart, stop);
        return [.. found.Select(w => new WaitingView { Id = w.Id, Offering = w.Name, Coach = w.CoachId is { } c ? names.GetValueOrDefault(c.Value) : null, Lesson = w.BookingId is { } b ? starts[b] : null, FirstDay = w.FirstDay, LastDay = w.LastDay })];
    }
}

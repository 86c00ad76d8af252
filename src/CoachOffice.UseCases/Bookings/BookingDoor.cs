using CoachOffice.Data;
using CoachOffice.Data.Bookings;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Bookings.Waiting;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage;
using NodaTime;

namespace CoachOffice.UseCases.Bookings;

/// <summary>What every deed on a booking does alike: version, all or nothing, an audit row, a clear refusal when the time is gone.</summary>
public sealed class BookingDoor(OfficeDb db, ITimeLocks locks, KeepBooking keep, PracticeClock clock, INewIds ids)
{
    /// <summary>Now, to the millisecond.</summary>
    public Instant Now => clock.Now;

    /// <summary>A new identifier.</summary>
    public Guid NewId() => ids.Next();

    /// <summary>The practice's zone.</summary>
    public Task<DateTimeZone> Zone(CancellationToken stop = default) => clock.Zone(stop);

    /// <summary>The terms in force; the usual ones until somebody wrote others.</summary>
    public Task<BookingTerms> Terms(CancellationToken stop = default) => db.Terms(stop);

    /// <summary>Runs a change inside one transaction; it says what stands against it, or nothing.</summary>
    public async Task<Outcome<BookingId>> Change(BookingDeed deed, Func<Booking, Task<Refusal?>> change, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(deed);
        ArgumentNullException.ThrowIfNull(change);
        await using var transaction = await db.Database.BeginTransactionAsync(stop);
        await locks.Hold([TimeHolder.Of(deed.Booking)], stop);
        var booking = await db.Bookings.Include(b => b.Seats).SingleOrDefaultAsync(b => b.Id == deed.Booking, stop);
        if (booking is null) return BookingRefusals.NotFound;
        if (deed.Version is { } shown && booking.Version != shown) return await Changed(deed.Booking, stop);
        var before = Standing.Of(booking);
        if (await change(booking) is { } against)
        {
            db.ChangeTracker.Clear();
            return against;
        }

        // The whole changes with any part of it: two deeds at once on one booking never both pass.
        db.Entry(booking).Property(b => b.Note).IsModified = true;
        return await Keep(booking.Id, deed.Actor, deed.Action, stop) switch
        {
            Saved.Yes => await Commit(transaction, before, booking, stop),
            Saved.TimeTaken => BookingRefusals.Taken,
            _ => await Changed(deed.Booking, stop),
        };
    }

    /// <summary>Saves the caller's changes with their audit row.</summary>
    public Task<Saved> Keep(BookingId booking, Actor actor, string action, CancellationToken stop) => keep.As(booking, actor, action, stop);

    /// <summary>Offers what a saved change freed to who waits, before the caller commits.</summary>
    public Task Offer(Standing before, Booking booking, CancellationToken stop) => keep.Offer(before, booking, stop);

    private async Task<Outcome<BookingId>> Commit(IDbContextTransaction transaction, Standing before, Booking booking, CancellationToken stop)
    {
        await keep.Offer(before, booking, stop);
        await transaction.CommitAsync(stop);
        return booking.Id;
    }

    private async Task<Refusal> Changed(BookingId booking, CancellationToken stop)
    {
        db.ChangeTracker.Clear();
        var last = await db.AuditEntries.Where(a => a.SubjectId == booking.Value).OrderByDescending(a => a.At).ThenByDescending(a => a.Id).FirstOrDefaultAsync(stop);
        return new Refusal(Clash.Code, $"{last?.ActorName ?? "Someone else"} changed this booking after you opened it ({last?.Action.Replace('-', ' ') ?? "unknown"}). Nothing was overwritten: look at it again, then repeat your change.");
    }
}

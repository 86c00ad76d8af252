using CoachOffice.Data;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Ledger;
using CoachOffice.UseCases.Ledger.Packages;
using Microsoft.EntityFrameworkCore;
using NodaTime.Text;

namespace CoachOffice.UseCases.Ledger;

/// <summary>
/// What a lesson means for money. Called by the deeds on bookings inside their own transaction, after the seat has its new state; it adds to that
/// transaction and saves nothing. A credit is only reserved at booking. The entry comes when the lesson is marked, or is cancelled too late.
/// </summary>
public sealed class SeatMoney(OfficeDb db, LedgerBook book, PackageShelf shelf, OwnPayer own)
{
    /// <summary>A seat was booked or held: a credit of a package that fits is reserved, when there is one.</summary>
    public async Task Booked(Booking booking, Seat seat, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(booking);
        ArgumentNullException.ThrowIfNull(seat);
        if (seat.PackageId is not null || !seat.IsOpen) return;
        var student = await db.Students.SingleAsync(s => s.Id == seat.StudentId, stop);
        seat.PayFrom((await shelf.Fitting(student, booking.OfferingId, booking.LocalStart.Date, stop))?.Id);
    }

    /// <summary>The booking was moved: a package that does not pay for the new day gives its place to one that does.</summary>
    public async Task Moved(Booking booking, Seat seat, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(booking);
        ArgumentNullException.ThrowIfNull(seat);
        if (!seat.IsOpen) return;
        if (seat.PackageId is { } kept && (await db.Packages.SingleAsync(p => p.Id == kept, stop)).PaysFor(booking.OfferingId, booking.LocalStart.Date)) return;
        seat.PayFrom(null);
        await Booked(booking, seat, stop);
    }

    /// <summary>A seat was cancelled, or lapsed: free of cost the credit goes back; too late the credit is used or the fee is charged, as the terms say.</summary>
    public Task Released(Booking booking, Seat seat, CancelCost cost, Actor actor, CancellationToken stop = default) => Settle(booking, seat, cost, (actor, "Cancelled late: "), stop);

    /// <summary>The student came: the reserved credit is used, or the lesson is charged at the price agreed.</summary>
    public async Task Attended(Booking booking, Seat seat, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(seat);
        var cost = new CancelCost(false, seat.PackageId is null ? seat.PriceMinor : 0, seat.PackageId is not null, default);
        await Settle(booking, seat, cost, (actor, ""), stop);
    }

    /// <summary>The student did not come: the credit is used or the fee is charged, as the terms say.</summary>
    public Task NoShow(Booking booking, Seat seat, CancelCost cost, Actor actor, CancellationToken stop = default) => Settle(booking, seat, cost, (actor, "Missed: "), stop);

    /// <summary>A mark or a cancellation was taken back: the entry it made is reversed. The seat is as booked again, and a credit is reserved for it when one is there.</summary>
    public async Task Undone(Booking booking, Seat seat, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(booking);
        ArgumentNullException.ThrowIfNull(seat);
        foreach (var entry in await Standing(seat, stop))
            await book.TakeBack(entry, await book.Facts(entry.PayerId, actor, stop: stop) with { Text = entry.Text }, stop);
        await Booked(booking, seat, stop);
    }

    private async Task Settle(Booking booking, Seat seat, CancelCost cost, (Actor Actor, string Why) by, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(booking);
        ArgumentNullException.ThrowIfNull(seat);
        ArgumentNullException.ThrowIfNull(cost);
        if ((await Standing(seat, stop)).Count > 0) return;
        if (!cost.TakesCredit) seat.PayFrom(null);
        if (!cost.TakesCredit && cost.FeeMinor == 0) return;
        var offering = await db.Offerings.AsNoTracking().SingleAsync(o => o.Id == booking.OfferingId, stop);
        var text = $"{by.Why}{offering.Name}, {LocalDatePattern.Iso.Format(booking.LocalStart.Date)}";
        if (cost.TakesCredit) await Use(booking, seat, (by.Actor, text), stop);
        else await Charge(booking, seat, cost.FeeMinor, (by.Actor, text), stop);
    }

    private async Task Use(Booking booking, Seat seat, (Actor Actor, string Text) by, CancellationToken stop)
    {
        var package = await db.Packages.SingleAsync(p => p.Id == seat.PackageId, stop);
        await book.Hold(package.PayerId, stop);
        var credits = await shelf.CreditsOf(package, stop);

        // The seat is marked already and no longer counts as reserved; of a package that ended it is still the one lesson left.
        var share = (credits with { Reserved = credits.Reserved + (seat.IsOpen ? 0 : 1) }).NextShare;
        var facts = FactsOf(booking, seat, await book.Facts(package.PayerId, by.Actor, stop: stop), by.Text) with { PackageId = package.Id };
        book.Add(EntryKind.CreditUse, facts, Movements.Earned(share, new TaxRate(package.TaxBasisPoints)));
    }

    private async Task Charge(Booking booking, Seat seat, long feeMinor, (Actor Actor, string Text) by, CancellationToken stop)
    {
        var student = await db.Students.SingleAsync(s => s.Id == seat.StudentId, stop);
        var facts = FactsOf(booking, seat, await book.Facts(await own.Of(student, stop), by.Actor, stop: stop), by.Text);
        var line = new TaxLine(by.Text, new Money(feeMinor, await book.Currency(stop)), new TaxRate(seat.TaxBasisPoints));
        book.Add(EntryKind.Charge, facts, Movements.Charge([(await book.Terms(stop)).TaxRule.Of(line)]));
    }

    private static EntryFacts FactsOf(Booking booking, Seat seat, EntryFacts facts, string text) =>
        facts with { StudentId = seat.StudentId, OfferingId = booking.OfferingId, CoachId = booking.CoachId, SeatId = seat.Id, Text = text };

    /// <summary>What stands in the books for a seat, this transaction's additions too.</summary>
    private async Task<IReadOnlyList<LedgerEntry>> Standing(Seat seat, CancellationToken stop)
    {
        await db.LedgerEntries.Include(e => e.Postings).Where(e => e.SeatId == seat.Id).LoadAsync(stop);
        var its = db.LedgerEntries.Local.Where(e => e.SeatId == seat.Id).ToList();
        return [.. its.Where(e => e.Kind != EntryKind.Reversal && !its.Exists(r => r.Reverses == e.Id))];
    }
}

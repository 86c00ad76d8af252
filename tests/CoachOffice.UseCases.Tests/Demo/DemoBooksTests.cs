using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Ledger;
using CoachOffice.UseCases.Ledger.Reports;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Demo;

/// <summary>A year's books of the demo practice, added up a second time without the ledger: from who came, what was agreed, and the packages sold.</summary>
[Collection(DemoCollection.Name)]
public sealed class DemoBooksTests(DemoOffice office)
{
    [Fact]
    public async Task The_monthly_report_is_what_the_lessons_themselves_add_up_to()
    {
        var expected = await FromLessons();
        var reported = new Dictionary<(int Year, int Month), decimal>();
        foreach (var year in expected.Keys.Select(k => k.Year).Distinct())
        {
            var view = (await office.Demo.Do((EarnedPage page) => page.Of(year, office.DemoOwner))).Value;
            foreach (var month in view.Months.Where(m => !m.Earned.IsZero)) reported[(year, month.Month)] = month.Earned.MinorUnits / 100m;
            Assert.Equal(view.Total.Earned.MinorUnits, view.Offerings.Sum(o => o.Earned.MinorUnits));
            Assert.Equal(view.Total.Earned.MinorUnits, view.Coaches.Sum(c => c.Earned.MinorUnits));
        }

        Assert.True(expected.Count >= 12, $"{expected.Count} months");
        Assert.Equal(expected.OrderBy(e => e.Key), reported.OrderBy(r => r.Key));
    }

    [Fact]
    public async Task Every_entry_balances_and_what_is_owed_is_what_was_charged_less_what_was_paid()
    {
        var entries = await office.Demo.Read(db => db.LedgerEntries.AsNoTracking().Include(e => e.Postings).ToListAsync());

        Assert.True(entries.Count > 300, $"{entries.Count} entries");
        Assert.All(entries, e => Assert.Equal(0, e.Postings.Sum(p => p.AmountMinor)));
        Assert.Contains(entries, e => e.Kind == EntryKind.PackageSale);
        Assert.Contains(entries, e => e.Kind == EntryKind.CreditUse);
        var owed = entries.GroupBy(e => e.PayerId).Select(g => g.SelectMany(e => e.Postings).Where(p => p.Account == LedgerAccount.Receivable).Sum(p => p.AmountMinor)).ToList();
        Assert.Contains(owed, o => o > 0);
        Assert.Contains(owed, o => o == 0);
        Assert.DoesNotContain(owed, o => o < 0);
    }

    [Fact]
    public async Task The_diary_has_lessons_of_every_fate_and_some_to_come()
    {
        var bookings = await office.Demo.Read(db => db.Bookings.AsNoTracking().Include(b => b.Seats).ToListAsync());

        var fates = bookings.SelectMany(b => b.Seats).Select(s => s.Status).Distinct();
        Assert.Superset(new HashSet<SeatStatus> { SeatStatus.Booked, SeatStatus.Attended, SeatStatus.NoShow, SeatStatus.Released, SeatStatus.CancelledLate }, fates.ToHashSet());
        Assert.True(bookings.Count(b => b.Starts > office.Demo.Now && b.Status == BookingStatus.Confirmed) >= 10);
        Assert.Contains(bookings, b => b.Capacity == 6 && b.Seats.Count > 1);
    }

    // Prices carry 20 % tax within them (VATA 1994 s 19: a sixth), rounded half up for each lesson; a package is earned in shares that add up to it.
    private async Task<Dictionary<(int Year, int Month), decimal>> FromLessons()
    {
        var zone = DateTimeZoneProviders.Tzdb[(await office.Demo.Read(db => db.Practices.SingleAsync())).Zone];
        var seats = await office.Demo.Read(db => db.Seats.AsNoTracking().Where(s => s.Status == SeatStatus.Attended || s.Status == SeatStatus.NoShow || s.Status == SeatStatus.CancelledLate).ToListAsync());
        var earned = new Dictionary<(int, int), decimal>();
        var uses = new Dictionary<Guid, int>();
        foreach (var seat in seats.OrderBy(s => s.EndedAt).ThenBy(s => s.Id.Value))
        {
            var day = seat.EndedAt!.Value.InZone(zone).Date;
            var amount = seat.PackageId is { } package ? Share(uses[package.Value] = uses.GetValueOrDefault(package.Value) + 1) : Net(seat.PriceMinor / 100m * (seat.Status == SeatStatus.CancelledLate ? .5m : 1m));
            if (amount != 0) earned[(day.Year, day.Month)] = earned.GetValueOrDefault((day.Year, day.Month)) + amount;
        }

        return earned;
    }

    private static decimal Net(decimal gross) => gross - Math.Round(gross / 6, 2, MidpointRounding.AwayFromZero);

    // 245.00 with a sixth of tax is 204.17 without; in five: twice 40.84, then 40.83.
    private static decimal Share(int use) => use <= 2 ? 40.84m : 40.83m;
}

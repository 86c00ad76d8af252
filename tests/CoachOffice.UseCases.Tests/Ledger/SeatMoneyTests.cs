using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Ledger;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Ledger;
using CoachOffice.UseCases.Ledger.Packages;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Ledger;

public abstract class SeatMoneyTests(OfficeFixture fixture)
{
    private static readonly LocalDate Day = new(2026, 3, 4);

    [Fact]
    public async Task A_lesson_without_a_package_is_charged_when_the_student_came()
    {
        var (till, una) = await Open();
        var lesson = await till.Book(una, Day);
        Assert.Empty(await Entries(till, una));

        await till.Came(lesson);

        var entry = Assert.Single(await Entries(till, una));
        Assert.Equal((EntryKind.Charge, "Private hour, 2026-03-04", till.Office.Coach.Account), (entry.Kind, entry.Text, entry.CoachId));
        Assert.Equal(4500, await till.Balance(await till.Payer(una)));
    }

    [Fact]
    public async Task A_mark_taken_back_takes_its_entry_back_and_a_new_mark_makes_a_new_one()
    {
        var (till, una) = await Open();
        var lesson = await till.Book(una, Day);
        await till.Came(lesson);

        await till.TakeBack(lesson);
        Assert.Equal(0, await till.Balance(await till.Payer(una)));
        await till.Came(lesson);

        Assert.Equal([EntryKind.Charge, EntryKind.Reversal, EntryKind.Charge], (await Entries(till, una)).Select(e => e.Kind));
        Assert.Equal(4500, await till.Balance(await till.Payer(una)));
    }

    [Fact]
    public async Task A_credit_is_reserved_at_booking_and_used_when_the_student_came()
    {
        var (till, una) = await Open();
        var package = await till.Sell(una, await till.Offer("Three hours", 3, "100.00", "20"));
        var lesson = await till.Book(una, Day);
        Assert.Equal((1, 2, 0), await Standing(till, package));
        Assert.Equal(package, await till.PackageOf(lesson));

        await till.Came(lesson);

        Assert.Equal((0, 2, 1), await Standing(till, package));
        Assert.Equal(10000, await till.Balance(await till.Payer(una)));
        Assert.Equal((-2778, -5555), (await till.SumOn(LedgerAccount.Revenue), await till.SumOn(LedgerAccount.Prepaid)));
        await till.TakeBack(lesson);
        Assert.Equal((1, 2, 0), await Standing(till, package));
        Assert.Equal((0, -8333), (await till.SumOn(LedgerAccount.Revenue), await till.SumOn(LedgerAccount.Prepaid)));
    }

    [Fact]
    public async Task All_lessons_of_a_package_earn_exactly_its_net_price()
    {
        var (till, una) = await Open();
        var package = await till.Sell(una, await till.Offer("Three hours", 3, "100.00", "20"));
        for (var n = 0; n < 4; n++) await till.Came(await till.Book(una, Day.PlusDays(n)));

        var kinds = (await Entries(till, una)).Select(e => (e.Kind, e.SumOn(LedgerAccount.Revenue))).ToList();
        Assert.Equal([(EntryKind.PackageSale, 0), (EntryKind.CreditUse, -2778), (EntryKind.CreditUse, -2778), (EntryKind.CreditUse, -2777), (EntryKind.Charge, -4500)], kinds);
        Assert.True((await till.Credits(package)).Prepaid.IsZero);
    }

    [Fact]
    public async Task The_one_that_ends_first_pays_and_ones_own_before_the_familys()
    {
        var (till, una) = await Open();
        var dos = await Sibling(till, una);
        var family = await till.Sell(dos, await till.Offer("Family", 1, "40", months: 1, shared: true));
        var late = await till.Sell(una, await till.Offer("Own late", 1, "40", months: 9));
        var soon = await till.Sell(una, await till.Offer("Own soon", 1, "40", months: 2));

        var used = new List<PackageId?>();
        for (var n = 0; n < 4; n++) used.Add(await till.PackageOf(await till.Book(una, Day.PlusDays(n))));

        Assert.Equal([soon, late, family, null], used);
    }

    [Fact]
    public async Task A_package_pays_only_for_its_offerings_its_people_and_its_time()
    {
        var (till, una) = await Open();
        var dos = await Sibling(till, una);
        await till.Sell(una, await till.Offer("Groups only", 5, "80", only: till.Diary.Group));
        await till.Sell(dos, await till.Offer("Not shared", 5, "80"));
        var short1 = await till.Sell(una, await till.Offer("One month", 5, "80", months: 1));

        Assert.Equal(short1, await till.PackageOf(await till.Book(una, new LocalDate(2026, 4, 2))));
        Assert.Null(await till.PackageOf(await till.Book(una, new LocalDate(2026, 4, 3))));
    }

    [Fact]
    public async Task Two_bookings_at_once_never_reserve_one_credit_twice()
    {
        var (till, una) = await Open();
        var dos = await Sibling(till, una);
        await till.Sell(una, await till.Offer("One for both", 1, "40", shared: true));
        var forms = new[] { till.Diary.At(Day.At(new LocalTime(9, 0)), una), till.Diary.At(Day.At(new LocalTime(11, 0)), dos) with { CoachId = till.Office.Owner.Account!.Value } };
        var bookings = await Task.WhenAll(forms.Select(till.Diary.Book));

        await Task.WhenAll(bookings.Select(id => till.Deed(id, (money, booking, seat) => money.Booked(booking, seat))));

        Assert.Single(await Task.WhenAll(bookings.Select(till.PackageOf)), p => p is not null);
    }

    [Fact]
    public async Task Cancelled_in_time_gives_the_credit_back_and_too_late_uses_it_or_costs_the_fee()
    {
        var (till, una) = await Open();
        var package = await till.Sell(una, await till.Offer("Two hours", 2, "80"));
        var (early, late, charged) = (await till.Book(una, Day), await till.Book(una, Day, 11), await till.Book(una, Day, 13));
        var terms = BookingTerms.Usual(Guid.Empty);

        await Cancel(till, early, new CancelCost(false, 0, false, default));
        await Cancel(till, late, new CancelCost(true, 0, true, default));
        await till.Deed(charged, async (money, booking, seat) =>
        {
            booking.Mark(seat.Id, SeatStatus.NoShow, till.Office.Now);
            await money.NoShow(booking, seat, CancelCost.OfNoShow(terms, booking, seat), till.Office.Desk);
        });

        Assert.Null(await till.PackageOf(early));
        Assert.Equal((0, 1, 1), await Standing(till, package));
        Assert.Equal(["Two hours", "Cancelled late: Private hour, 2026-03-04", "Missed: Private hour, 2026-03-04"], (await Entries(till, una)).Select(e => e.Text));
        Assert.Equal(8000 + 4500, await till.Balance(await till.Payer(una)));
    }

    [Fact]
    public async Task Moved_beyond_its_packages_last_day_a_lesson_takes_another_or_none()
    {
        var (till, una) = await Open();
        var soon = await till.Sell(una, await till.Offer("One month", 1, "40", months: 1));
        var later = await till.Sell(una, await till.Offer("One year", 1, "40"));
        var lesson = await till.Book(una, Day);
        Assert.Equal(soon, await till.PackageOf(lesson));

        await till.Deed(lesson, async (money, booking, seat) =>
        {
            booking.MoveTo(new BookedTime(new LocalDate(2026, 5, 4).At(new LocalTime(9, 0)), "Europe/London", 60, 0), booking.Where);
            await money.Moved(booking, seat);
        });

        Assert.Equal(later, await till.PackageOf(lesson));
        Assert.Equal((0, 1, 0), await Standing(till, soon));
    }

    private static Task Cancel(Till till, BookingId id, CancelCost cost) => till.Deed(id, async (money, booking, seat) =>
    {
        booking.Release(seat.Id, cost.IsLate ? SeatStatus.CancelledLate : SeatStatus.Released, till.Office.Now);
        await money.Released(booking, seat, cost, till.Office.Desk);
    });

    private static async Task<(int Reserved, int Free, int Used)> Standing(Till till, PackageId id)
    {
        var credits = await till.Credits(id);
        return (credits.Reserved, credits.Free, credits.Used);
    }

    private static Task<List<LedgerEntry>> Entries(Till till, StudentId student) =>
        till.Office.Read(db => db.LedgerEntries.AsNoTracking().Include(e => e.Postings).Where(e => e.StudentId == student).OrderBy(e => e.At).ThenBy(e => e.Id).ToListAsync());

    private static async Task<StudentId> Sibling(Till till, StudentId student)
    {
        var payer = await till.Payer(student);
        var sibling = await till.Student("Dos");
        await till.Office.Change(async db => (await db.Students.SingleAsync(s => s.Id == sibling)).PaidBy(payer));
        return sibling;
    }

    private async Task<(Till Till, StudentId Una)> Open()
    {
        var till = await Till.Of(await fixture.Another(opened: true));
        return (till, await till.Student("Una"));
    }
}

public sealed class SeatMoneyOnPostgreSql(PostgreSqlOffice office) : SeatMoneyTests(office), IClassFixture<PostgreSqlOffice>;

public sealed class SeatMoneyOnSqlite(SqliteOffice office) : SeatMoneyTests(office), IClassFixture<SqliteOffice>;

using CoachOffice.Domain.Ledger;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Ledger;
using CoachOffice.UseCases.Ledger.Packages;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Ledger;

public abstract class PackagesTests(OfficeFixture fixture)
{
    private static readonly LocalDate Day = new(2026, 3, 4);

    [Fact]
    public async Task What_is_left_after_the_last_day_is_earned_once()
    {
        var (till, una) = await Open();
        var package = await till.Sell(una, await till.Offer("Three hours", 3, "100.00", "20", months: 1));
        await till.Came(await till.Book(una, Day));
        Assert.Equal(0, await End(till));

        till.Office.Time.Advance(TimeSpan.FromDays(31));
        Assert.Equal(0, await End(till));
        till.Office.Time.Advance(TimeSpan.FromDays(1));
        Assert.Equal((1, 0), (await End(till), await End(till)));

        Assert.Equal((-8333, 0), (await till.SumOn(LedgerAccount.Revenue), await till.SumOn(LedgerAccount.Prepaid)));
        Assert.True((await till.Credits(package)).IsEnded);
        Assert.Equal("Three hours ended with 2 of 3 lessons left", await till.Office.Read(db => db.LedgerEntries.Where(e => e.Kind == EntryKind.PackageEnd).Select(e => e.Text).SingleAsync()));
    }

    [Fact]
    public async Task A_package_waits_for_lessons_that_are_not_marked_yet()
    {
        var (till, una) = await Open();
        await till.Sell(una, await till.Offer("Three hours", 3, "100.00", "20", months: 1));
        var lesson = await till.Book(una, Day);
        till.Office.Time.Advance(TimeSpan.FromDays(40));
        Assert.Equal(0, await End(till));

        await till.Came(lesson);

        Assert.Equal(1, await End(till));
        Assert.Equal(0, await till.SumOn(LedgerAccount.Prepaid));
    }

    [Fact]
    public async Task A_mark_taken_back_after_the_end_and_given_again_earns_the_same()
    {
        var (till, una) = await Open();
        await till.Sell(una, await till.Offer("Three hours", 3, "100.00", "20", months: 1));
        var lesson = await till.Book(una, Day);
        await till.Came(lesson);
        till.Office.Time.Advance(TimeSpan.FromDays(40));
        await End(till);

        await till.TakeBack(lesson);
        Assert.Equal(-2778, await till.SumOn(LedgerAccount.Prepaid));
        await till.Came(lesson);

        Assert.Equal((0, -8333), (await till.SumOn(LedgerAccount.Prepaid), await till.SumOn(LedgerAccount.Revenue)));
    }

    [Fact]
    public async Task A_last_day_that_is_moved_opens_an_ended_package_again()
    {
        var (till, una) = await Open();
        var package = await till.Sell(una, await till.Offer("Three hours", 3, "90", months: 1));
        till.Office.Time.Advance(TimeSpan.FromDays(40));
        await End(till);

        await till.Office.Must((ExtendPackage extend) => extend.To(package, new LocalDate(2026, 12, 31), till.Office.Owner));

        Assert.Equal((3, false, 9000), ((await till.Credits(package)).Free, (await till.Credits(package)).IsEnded, (await till.Credits(package)).Prepaid.MinorUnits));
        Assert.Equal(package, await till.PackageOf(await till.Book(una, new LocalDate(2026, 4, 20))));
        Assert.Equal(0, await End(till));
    }

    [Fact]
    public async Task Unused_lessons_go_back_with_their_tax()
    {
        var (till, una) = await Open();
        var package = await till.Sell(una, await till.Offer("Three hours", 3, "100.00", "20"));
        await till.Came(await till.Book(una, Day));
        var form = new ReturnForm(till.NewEntry(), package);

        await till.Office.Must((ReturnPackage give) => give.From(form, till.Office.Owner));
        await till.Office.Must((ReturnPackage give) => give.From(form, till.Office.Owner));

        // Net 55.55 of 83.33, tax 11.11 of 16.67.
        Assert.Equal((0, -2778, -556), (await till.SumOn(LedgerAccount.Prepaid), await till.SumOn(LedgerAccount.Revenue), await till.SumOn(LedgerAccount.Tax)));
        Assert.Equal(3334, await till.Balance(await till.Payer(una)));
        Assert.Null(await till.PackageOf(await till.Book(una, Day.PlusDays(1))));
    }

    [Fact]
    public async Task Booked_lessons_are_cancelled_before_a_package_goes_back_and_a_used_one_is_not_unsold()
    {
        var (till, una) = await Open();
        var package = await till.Sell(una, await till.Offer("Three hours", 3, "90"));
        var lesson = await till.Book(una, Day);
        var refused = await till.Office.Refuses((ReturnPackage give) => give.From(new ReturnForm(till.NewEntry(), package), till.Office.Owner));
        Assert.Equal("package-booked", refused.Single().Code);
        await till.Came(lesson);

        var sale = await till.Office.Read(db => db.LedgerEntries.Where(e => e.Kind == EntryKind.PackageSale).Select(e => e.Id).SingleAsync());
        var unsold = await till.Office.Refuses((ReverseEntry reverse) => reverse.From(new(till.NewEntry(), sale, "typed wrong"), till.Office.Owner));
        Assert.Equal("package-used", unsold.Single().Code);
    }

    [Fact]
    public async Task A_sale_typed_wrong_is_reversed_and_its_lessons_are_gone()
    {
        var (till, una) = await Open();
        var package = await till.Sell(una, await till.Offer("Three hours", 3, "90"));
        var sale = await till.Office.Read(db => db.LedgerEntries.Where(e => e.PackageId == package).Select(e => e.Id).SingleAsync());

        await till.Reverse(sale);

        Assert.Equal((0, 0), (await till.Balance(await till.Payer(una)), await till.SumOn(LedgerAccount.Prepaid)));
        Assert.Null(await till.PackageOf(await till.Book(una, Day)));
    }

    [Fact]
    public async Task Those_that_end_soon_with_lessons_nobody_booked_are_said()
    {
        var (till, una) = await Open();
        await till.Sell(una, await till.Offer("Soon", 2, "90", months: 1));
        await till.Sell(una, await till.Offer("Late", 2, "90", months: 6));
        await till.Sell(una, await till.Offer("Never", 2, "90", months: null));
        till.Office.Time.Advance(TimeSpan.FromDays(5));

        var soon = await till.Office.Do((PackageRows rows) => rows.EndingSoon(10));
        Assert.Equal("Soon", Assert.Single(soon).Package.Name);
        await till.Book(una, Day.PlusDays(10));
        await till.Book(una, Day.PlusDays(11));
        Assert.Empty(await till.Office.Do((PackageRows rows) => rows.EndingSoon(10)));
    }

    [Fact]
    public async Task Only_the_owner_changes_prices_and_gives_packages_back()
    {
        var (till, una) = await Open();
        var package = await till.Sell(una, await till.Offer("Three hours", 3, "90"));
        var office = till.Office;
        var refused = new[]
        {
            await office.Refuses((ReturnPackage give) => give.From(new ReturnForm(till.NewEntry(), package), office.Desk)),
            await office.Refuses((ExtendPackage extend) => extend.To(package, new LocalDate(2026, 12, 31), office.Coach)),
            await office.Refuses((AddPackageOffer add) => add.From(PackageOfferId.From(till.NewEntry().Value), new PackageOfferForm { Name = "x", Lessons = 1, Price = "1" }, office.Coach)),
        };

        Assert.All(refused, r => Assert.Equal(NotAllowed.Code, r.Single().Code));
    }

    private static Task<int> End(Till till) => till.Office.Do((EndPackages end) => end.Once());

    private async Task<(Till Till, StudentId Una)> Open()
    {
        var till = await Till.Of(await fixture.Another(opened: true));
        return (till, await till.Student("Una"));
    }
}

public sealed class PackagesOnPostgreSql(PostgreSqlOffice office) : PackagesTests(office), IClassFixture<PostgreSqlOffice>;

public sealed class PackagesOnSqlite(SqliteOffice office) : PackagesTests(office), IClassFixture<SqliteOffice>;

using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Ledger;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Bookings;
using CoachOffice.UseCases.Ledger;
using CoachOffice.UseCases.Ledger.Packages;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Bookings;

/// <summary>What booking, cancelling and marking mean for money and mail, in the same transaction.</summary>
public abstract class BookingEffectsTests(OfficeFixture fixture)
{
    private static readonly LocalDateTime Ten = new(2026, 3, 10, 10, 0);

    [Fact]
    public async Task Who_came_owes_the_price_agreed_and_taking_the_mark_back_takes_the_charge_back()
    {
        var (diary, ann, id) = await Booked(package: false);
        var seat = await At(diary, id, 0);

        await diary.Office.Must((MarkAttendance mark) => mark.Of(id, seat, true, diary.Office.Desk));
        Assert.Equal(4500, await Owed(diary, ann));
        await diary.Office.Must((MarkAttendance mark) => mark.Of(id, seat, false, diary.Office.Desk));
        Assert.Equal(4500, await Owed(diary, ann));
        await diary.Office.Must((MarkAttendance mark) => mark.Of(id, seat, null, diary.Office.Desk));
        Assert.Equal(0, await Owed(diary, ann));
        Assert.Equal([EntryKind.Charge, EntryKind.Charge, EntryKind.Reversal, EntryKind.Reversal], (await Kinds(diary)).Order());
    }

    [Fact]
    public async Task A_credit_is_reserved_at_booking_used_when_marked_and_comes_back_when_cancelled_in_time()
    {
        var (diary, ann, id) = await Booked(package: true);
        var owed = await Owed(diary, ann);
        Assert.NotNull((await BookLessonTests.Read(diary, id)).Seats[0].PackageId);
        var second = await diary.Book(diary.At(Ten.PlusDays(7), ann));
        await diary.Office.Must((CancelBooking cancel) => cancel.Of(second, null, CancelReason.ByStudent, diary.Office.Desk));
        Assert.Null((await BookLessonTests.Read(diary, second)).Seats[0].PackageId);

        var seat = await At(diary, id, 0);
        await diary.Office.Must((MarkAttendance mark) => mark.Of(id, seat, true, diary.Office.Desk));

        Assert.Equal(owed, await Owed(diary, ann));
        Assert.Equal([EntryKind.PackageSale, EntryKind.CreditUse], await Kinds(diary));
    }

    [Theory]
    [InlineData(25, false, 0)]
    [InlineData(23, false, 2250)]
    public async Task A_late_cancellation_costs_what_the_terms_say(int hoursBefore, bool package, long fee)
    {
        var (diary, ann, id) = await Booked(package);
        diary.Office.Time.SetUtcNow(new DateTimeOffset(2026, 3, 10, 10, 0, 0, TimeSpan.Zero).AddHours(-hoursBefore));

        await diary.Office.Must((CancelBooking cancel) => cancel.Of(id, null, CancelReason.ByStudent, diary.Office.Desk));
        Assert.Equal(fee, await Owed(diary, ann));

        await diary.Office.Must((TakeBackCancel back) => back.Of(id, diary.Office.Desk));
        Assert.Equal(0, await Owed(diary, ann));
    }

    [Fact]
    public async Task A_late_cancellation_uses_the_reserved_credit_up()
    {
        var (diary, ann, id) = await Booked(package: true);
        var owed = await Owed(diary, ann);
        diary.Office.Time.SetUtcNow(new DateTimeOffset(2026, 3, 10, 8, 0, 0, TimeSpan.Zero));

        await diary.Office.Must((CancelBooking cancel) => cancel.Of(id, null, CancelReason.ByStudent, diary.Office.Desk));

        Assert.Equal((owed, EntryKind.CreditUse), (await Owed(diary, ann), (await Kinds(diary))[^1]));
    }

    [Fact]
    public async Task The_student_is_told_of_booking_moving_and_cancelling_and_not_of_what_was_only_held()
    {
        var (diary, ann, id) = await Booked(package: false);
        Assert.Equal([MessageKind.BookingInvitation], await Messages(diary));
        await diary.Office.Must((MoveBooking move) => move.To(id, null, new MoveForm { Start = Ten.PlusHours(3) }, diary.Office.Desk));
        Assert.Equal(2, (await Messages(diary)).Count);
        var held = await diary.Book(diary.At(Ten.PlusDays(1), ann) with { HeldUntil = diary.Office.Now + Duration.FromMinutes(10) });
        var seat = (await BookLessonTests.Read(diary, held)).Seats[0].Id;
        await diary.Office.Must((ReleaseSeat release) => release.Of(held, seat, CancelReason.ByStudent, diary.Office.Desk));
        Assert.Equal(2, (await Messages(diary)).Count);
    }

    private static async Task<SeatId> At(Diary diary, BookingId id, int seat)
    {
        diary.Office.Time.SetUtcNow(new DateTimeOffset(2026, 3, 10, 10, 0, 0, TimeSpan.Zero));
        return (await BookLessonTests.Read(diary, id)).Seats[seat].Id;
    }

    private static Task<List<MessageKind>> Messages(Diary diary) => diary.Office.Read(db => db.Messages.Where(m => m.Kind != MessageKind.LessonReminder).OrderBy(m => m.CreatedAt).ThenBy(m => m.Id).Select(m => m.Kind).ToListAsync());

    private static Task<List<EntryKind>> Kinds(Diary diary) => diary.Office.Read(db => db.LedgerEntries.OrderBy(e => e.At).ThenBy(e => e.Id).Select(e => e.Kind).ToListAsync());

    private static Task<long> Owed(Diary diary, StudentId student) => diary.Office.Read(async db =>
    {
        var payer = await db.Students.Where(s => s.Id == student).Select(s => s.PayerId).SingleAsync();
        return await db.LedgerPostings.Where(p => p.Account == LedgerAccount.Receivable && db.LedgerEntries.Any(e => e.Id == p.EntryId && e.PayerId == payer)).SumAsync(p => p.AmountMinor);
    });

    private async Task<(Diary Diary, StudentId Student, BookingId Booking)> Booked(bool package)
    {
        var diary = await Diary.Of(await fixture.Another(opened: true));
        var (office, ann) = (diary.Office, await diary.Student("Ann"));
        if (package)
        {
            var offer = await office.Must((AddPackageOffer add) => add.From(PackageOfferId.From(Guid.Parse("80000000-0000-0000-0000-000000000001")), new PackageOfferForm { Name = "Five", Lessons = 5, Offerings = [diary.Private], Price = "200.00" }, office.Owner));
            var payer = await office.Must((OpenPayer open) => open.For(ann, office.Desk));
            await office.Must((SellPackage sell) => sell.From(new SaleForm { Id = EntryId.From(Guid.Parse("80000000-0000-0000-0000-000000000002")), PayerId = payer, StudentId = ann, OfferId = offer }, office.Desk));
        }

        return (diary, ann, await diary.Book(diary.At(Ten, ann)));
    }
}

public sealed class BookingEffectsOnSqlite(SqliteOffice office) : BookingEffectsTests(office), IClassFixture<SqliteOffice>;

public sealed class BookingEffectsOnPostgreSql(PostgreSqlOffice office) : BookingEffectsTests(office), IClassFixture<PostgreSqlOffice>;

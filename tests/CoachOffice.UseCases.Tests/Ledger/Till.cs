using CoachOffice.Data;
using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Ledger;
using CoachOffice.Domain.Students;
using CoachOffice.SeedDemo.Builders;
using CoachOffice.UseCases.Ledger;
using CoachOffice.UseCases.Ledger.Packages;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using NodaTime;
using Diary = CoachOffice.UseCases.Tests.Bookings.Diary;

namespace CoachOffice.UseCases.Tests.Ledger;

/// <summary>What tests of money do at the desk, each in a line.</summary>
public sealed class Till
{
    private static int _tills;

    private readonly SeededIds _ids = new(Interlocked.Increment(ref _tills) * 7919);
    private readonly Diary? _diary;

    private Till(TestOffice office, Diary? diary) => (Office, _diary) = (office, diary);

    public TestOffice Office { get; }

    public Diary Diary => _diary ?? throw new InvalidOperationException("This till has no diary.");

    /// <summary>A till where no lessons are booked.</summary>
    public static Till Without(TestOffice office) => new(office, null);

    public static async Task<Till> Of(TestOffice office) => new(office, await Diary.Of(office));

    /// <summary>The id of a form shown a second later: entries stand in the order of their time.</summary>
    public EntryId NewEntry()
    {
        Office.Time.Advance(TimeSpan.FromSeconds(1));
        return EntryId.From(_ids.Next());
    }

    public Task<StudentId> Student(string given) => Office.Register(AStudent.Named(given, "Payson"));

    public Task<PayerId> Payer(StudentId student) => Office.Must((OpenPayer open) => open.For(student, Office.Desk));

    public PaymentForm Form(PayerId payer, string amount) => new() { Id = NewEntry(), PayerId = payer, Amount = amount, Method = PaymentMethod.Cash };

    public Task<EntryId> Pay(PayerId payer, string amount) => Office.Must((TakePayment take) => take.From(Form(payer, amount), Office.Desk));

    public Task<EntryId> Charge(PayerId payer, string price, string tax = "", string text = "Range balls") =>
        Office.Must((ChargePayer charge) => charge.From(new ChargeForm { Id = NewEntry(), PayerId = payer, Lines = [new ChargeLine(text, price, tax)] }, Office.Desk));

    public Task<EntryId> Reverse(EntryId entry) => Office.Must((ReverseEntry reverse) => reverse.From(new Reversing(NewEntry(), entry, "typed wrong"), Office.Owner));

    public Task<PackageOfferId> Offer(string name, int lessons, string price, string tax = "", int? months = 12, bool shared = false, params OfferingId[] only) =>
        Office.Must((AddPackageOffer add) => add.From(
            PackageOfferId.From(_ids.Next()), new PackageOfferForm { Name = name, Lessons = lessons, Price = price, TaxPercent = tax, ValidMonths = months, IsShared = shared, Offerings = only }, Office.Owner));

    /// <summary>Sells a package and gives it.</summary>
    public async Task<PackageId> Sell(StudentId student, PackageOfferId offer)
    {
        var form = new SaleForm { Id = NewEntry(), PayerId = await Payer(student), StudentId = student, OfferId = offer };
        var sale = await Office.Must((SellPackage sell) => sell.From(form, Office.Desk));
        return (await Office.Read(db => db.LedgerEntries.SingleAsync(e => e.Id == sale))).PackageId!.Value;
    }

    public Task<long> Balance(PayerId payer) => Office.Do<LedgerBook, long>(async book => (await book.Balance(payer)).MinorUnits);

    public Task<long> SumOn(LedgerAccount account) => Office.Read(db => db.LedgerPostings.Where(p => p.Account == account).SumAsync(p => p.AmountMinor));

    public Task<PackageCredits> Credits(PackageId id) => Office.Do<IServiceProvider, PackageCredits>(async scope =>
        await scope.GetRequiredService<PackageShelf>().CreditsOf(await scope.GetRequiredService<OfficeDb>().Packages.SingleAsync(p => p.Id == id)));

    /// <summary>A deed on a booking as the office does it: one transaction, and what it means for money in it.</summary>
    public Task Deed(BookingId id, Func<SeatMoney, Booking, Seat, Task> deed) => Office.Do<IServiceProvider, int>(async scope =>
    {
        Office.Time.Advance(TimeSpan.FromSeconds(1));
        var db = scope.GetRequiredService<OfficeDb>();
        await using var transaction = await db.Database.BeginTransactionAsync();
        var booking = await db.Bookings.Include(b => b.Seats).SingleAsync(b => b.Id == id);
        foreach (var seat in booking.Seats.ToList()) await deed(scope.GetRequiredService<SeatMoney>(), booking, seat);
        var rows = await db.SaveChangesAsync();
        await transaction.CommitAsync();
        return rows;
    });

    /// <summary>A lesson on a day at nine, with a credit reserved where there is one.</summary>
    public async Task<BookingId> Book(StudentId student, LocalDate day, int hour = 9)
    {
        var id = await Diary.Book(Diary.At(day.At(new LocalTime(hour, 0)), student));
        await Deed(id, (money, booking, seat) => money.Booked(booking, seat));
        return id;
    }

    public Task Came(BookingId id) => Deed(id, async (money, booking, seat) =>
    {
        booking.Mark(seat.Id, SeatStatus.Attended, Office.Now);
        await money.Attended(booking, seat, Office.Coach);
    });

    public Task TakeBack(BookingId id) => Deed(id, async (money, booking, seat) =>
    {
        booking.Mark(seat.Id, SeatStatus.Booked, Office.Now);
        await money.Undone(booking, seat, Office.Coach);
    });

    public Task<PackageId?> PackageOf(BookingId id) => Office.Read(db => db.Seats.Where(s => s.BookingId == id).Select(s => s.PackageId).SingleAsync());
}

using CoachOffice.Data;
using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Bookings;
using CoachOffice.UseCases.FollowUps;
using CoachOffice.UseCases.Tests.Fixtures;
using Ical.Net;
using Ical.Net.CalendarComponents;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using MimeKit;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Bookings.Mail;

/// <summary>Bookings made by hand, and the letters that come of them. The operations on bookings have tests of their own.</summary>
internal sealed class BookedLessons(TestOffice office)
{
    private static readonly PlaceId Range = PlaceId.From(new Guid("10000000-0000-0000-0000-000000000001"));
    private static readonly OfferingId Hour = OfferingId.From(new Guid("30000000-0000-0000-0000-000000000001"));
    private readonly SeededIds _ids = new(26);

    public TestOffice Office => office;

    public static async Task<BookedLessons> Of(TestOffice office)
    {
        await office.Change(db =>
        {
            var range = Place.Of(Range);
            range.Write("Harbour Road range", "1 Harbour Road");
            db.AddRange(range, Offering.Of(Hour, new OfferingDetails { Name = "Golf hour", Kind = OfferingKind.Group, PriceMinor = 4500, Capacity = 4, Places = [Range], Coaches = [office.Coach.Account!.Value] }, office.Now));
            return Task.CompletedTask;
        });
        return new BookedLessons(office);
    }

    /// <summary>One booking, and the letters its making asks for.</summary>
    public async Task<BookingId> Book(LocalDateTime start, params StudentId[] students)
    {
        var booking = default(BookingId?);
        await Do(async (db, messages) =>
        {
            var made = await Make(db, start, students);
            foreach (var seat in made.Seats) await messages.Booked(made, seat);
            booking = made.Id;
        });
        return booking!.Value;
    }

    /// <summary>A time kept for a student for ten minutes.</summary>
    public Task Hold(LocalDateTime start, StudentId student) => Do(async (db, _) =>
        (await Make(db, start, [])).Seat(SeatId.From(_ids.Next()), student, new SeatTerms(4500, 0, office.Now + Duration.FromMinutes(10)), office.Now));

    /// <summary>A row of bookings by a rule of weeks.</summary>
    public async Task<SeriesId> BookRow(LocalDateTime start, int weeks, params StudentId[] students)
    {
        var series = BookingSeries.Of(SeriesId.From(_ids.Next()), $"FREQ=WEEKLY;COUNT={weeks}", start, "Europe/London", office.Now);
        await Do(async (db, messages) =>
        {
            db.Add(series);
            var row = new List<Booking>();
            for (var week = 0; week < weeks; week++)
            {
                var booking = await Make(db, start.PlusWeeks(week), students);
                booking.BelongTo(series.Id, start.PlusWeeks(week));
                row.Add(booking);
            }

            await messages.SeriesBooked(row);
        });
        return series.Id;
    }

    public Task Move(BookingId id, LocalDateTime start) => Change(id, async (booking, messages) =>
    {
        booking.MoveTo(booking.Time with { LocalStart = start }, booking.Where);
        await messages.Moved(booking);
    });

    /// <summary>One student gives up a seat, or everybody.</summary>
    public Task Cancel(BookingId id, StudentId? only = null, SeatStatus how = SeatStatus.Released) => Change(id, async (booking, messages) =>
    {
        var seats = booking.Seats.Where(s => s.IsOpen && (only is null || s.StudentId == only)).ToList();
        foreach (var seat in seats) booking.Release(seat.Id, how, office.Now);
        if (only is null) booking.Cancel(office.Now);
        foreach (var seat in seats) await messages.Cancelled(booking, seat);
    });

    /// <summary>A row is cancelled from one of its lessons on, counted from 0.</summary>
    public Task CancelRow(SeriesId series, int from = 0) => Do(async (db, messages) =>
    {
        var row = (await db.Bookings.Include(b => b.Seats).Where(b => b.SeriesId == series).OrderBy(b => b.Starts).ToListAsync()).Skip(from).ToList();
        foreach (var booking in row.Where(b => b.IsOn))
        {
            var seats = booking.Seats.Where(s => s.IsOpen).ToList();
            foreach (var seat in seats) booking.Release(seat.Id, SeatStatus.Released, office.Now);
            booking.Cancel(office.Now);
            foreach (var seat in seats) await messages.Cancelled(booking, seat);
        }

        await messages.SeriesCancelled(row);
    });

    public Task TakeBack(BookingId id) => Change(id, async (booking, messages) =>
    {
        booking.TakeBack([.. booking.Seats.Where(s => s.EndedAt == booking.CancelledAt).Select(s => s.Id)]);
        foreach (var seat in booking.Seats.Where(s => s.Counts)) await messages.Booked(booking, seat);
    });

    public Task Join(BookingId id, StudentId student) => Change(id, async (booking, messages) =>
        await messages.Booked(booking, booking.Seat(SeatId.From(_ids.Next()), student, new SeatTerms(4500, 0), office.Now)));

    public Task Change(BookingId id, Func<Booking, BookingMessages, Task> change) => Do(async (db, messages) =>
        await change(await db.Bookings.Include(b => b.Seats).SingleAsync(b => b.Id == id), messages));

    public async Task Do(Func<OfficeDb, BookingMessages, Task> act)
    {
        await using var scope = office.Services.CreateAsyncScope();
        var db = scope.ServiceProvider.GetRequiredService<OfficeDb>();
        await using var transaction = await db.Database.BeginTransactionAsync();
        await act(db, scope.ServiceProvider.GetRequiredService<BookingMessages>());
        await db.SaveChangesAsync();
        await transaction.CommitAsync();
    }

    /// <summary>Lets the two minutes pass and sends what is due; the letters of this sweep.</summary>
    public async Task<IReadOnlyList<MimeMessage>> Sent()
    {
        office.Time.Advance(TimeSpan.FromMinutes(2));
        var before = Files().ToHashSet();
        await office.Do((SweepMessages sweep) => sweep.Once(CancellationToken.None));
        return [.. Files().Where(f => !before.Contains(f)).Select(f => MimeMessage.Load(f))];
    }

    public static Calendar CalendarIn(MimeMessage mail) => Calendar.Load(PartOf(mail).Text)!;

    public static CalendarEvent EventIn(MimeMessage mail) => Assert.Single(CalendarIn(mail).Events);

    public static TextPart PartOf(MimeMessage mail) => Assert.Single(mail.BodyParts.OfType<TextPart>(), p => p.ContentType.IsMimeType("text", "calendar"));

    private string[] Files() => Directory.Exists(Path.Combine(office.Folder, "mail")) ? Directory.GetFiles(Path.Combine(office.Folder, "mail"), "*.eml") : [];

    private async Task<Booking> Make(OfficeDb db, LocalDateTime start, StudentId[] students)
    {
        var offering = await db.Offerings.SingleAsync(o => o.Id == Hour);
        var booking = Booking.Of(BookingId.From(_ids.Next()), offering, new BookedTime(start, "Europe/London", 60, 0), new BookingWhere(office.Coach.Account!.Value, Range, null), office.Now);
        foreach (var student in students) booking.Seat(SeatId.From(_ids.Next()), student, SeatTerms.Of(offering), office.Now);
        db.Add(booking);
        return booking;
    }
}

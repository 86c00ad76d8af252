using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Students;
using CoachOffice.SeedDemo.Builders;
using CoachOffice.UseCases.FollowUps;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Bookings.Mail;

/// <summary>Who is invited to what: guardians, people without an address, rows, guests, and who waits.</summary>
public abstract class InvitedPeopleTests(OfficeFixture fixture)
{
    private static readonly LocalDateTime Start = new(2026, 3, 30, 9, 0);

    [Fact]
    public async Task A_minors_letter_goes_to_the_guardian_who_is_the_one_invited()
    {
        var (lessons, _) = await Scene();
        await lessons.Book(Start, await lessons.Office.Register(AStudent.Junior("Kit", "Marsh")));

        var mail = Assert.Single(await lessons.Sent());

        Assert.Equal("mara.marsh@example.org", mail.To.Mailboxes.Single().Address);
        Assert.Equal("mailto:mara.marsh@example.org", BookedLessons.EventIn(mail).Attendees.Single().Value!.ToString());
        Assert.Contains("this lesson is booked for Kit", mail.TextBody, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Without_an_address_a_new_booking_is_silent_but_a_change_asks_a_person()
    {
        var (lessons, _) = await Scene();
        var booking = await lessons.Book(Start, await lessons.Office.Register(AStudent.Named("No", "Mail") with { Email = "" }));
        Assert.Empty(await lessons.Sent());
        await lessons.Cancel(booking);
        Assert.Empty(await lessons.Sent());

        var rows = await lessons.Office.Read(db => db.Messages.Where(m => m.Kind != MessageKind.LessonReminder).OrderBy(m => m.CreatedAt).Select(m => new { m.Kind, m.State, m.LastProblem }).ToListAsync());
        Assert.Equal((MessageState.Skipped, "no-mail"), (rows[0].State, rows[0].LastProblem));
        Assert.Equal((MessageState.NeedsAttention, "no-address"), (rows[1].State, rows[1].LastProblem));
    }

    [Fact]
    public async Task Nothing_is_said_of_a_lesson_that_is_over()
    {
        var (lessons, alma) = await Scene();
        await lessons.Book(new LocalDateTime(2026, 2, 23, 9, 0), alma);

        Assert.Empty(await lessons.Sent());
    }

    /// <summary>RFC 5546 3.2.5: one of a row is called off with the row's UID and its RECURRENCE-ID, the whole row without.</summary>
    [Fact]
    public async Task A_row_is_one_letter_and_each_change_in_it_names_its_day()
    {
        var (lessons, alma) = await Scene();
        var series = await lessons.BookRow(Start, 4, alma);
        var booked = Assert.Single(await lessons.Sent());
        var row = await lessons.Office.Read(db => db.Bookings.Where(b => b.SeriesId == series).OrderBy(b => b.Starts).Select(b => b.Id).ToListAsync());

        await lessons.Move(row[1], Start.PlusDays(8));
        var moved = Assert.Single(await lessons.Sent());
        await lessons.Cancel(row[2]);
        var one = Assert.Single(await lessons.Sent());
        await lessons.CancelRow(series);
        var all = Assert.Single(await lessons.Sent());

        Assert.Contains("and 3 more", booked.Subject, StringComparison.Ordinal);
        Assert.Equal(("FREQ=WEEKLY;COUNT=4", 0), (BookedLessons.EventIn(booked).RecurrenceRule!.ToString(), BookedLessons.EventIn(booked).Sequence));
        Assert.Single(new[] { booked, moved, one, all }.Select(m => BookedLessons.EventIn(m).Uid).Distinct());
        Assert.Equal((new DateTime(2026, 4, 6, 9, 0, 0), 1, "REQUEST"), (BookedLessons.EventIn(moved).RecurrenceIdentifier!.StartTime.Value, BookedLessons.EventIn(moved).Sequence, BookedLessons.CalendarIn(moved).Method!));
        Assert.Equal((new DateTime(2026, 4, 13, 9, 0, 0), 1, "CANCEL"), (BookedLessons.EventIn(one).RecurrenceIdentifier!.StartTime.Value, BookedLessons.EventIn(one).Sequence, BookedLessons.CalendarIn(one).Method!));
        Assert.Null(BookedLessons.EventIn(all).RecurrenceIdentifier);
        Assert.Equal(("CANCEL", 2), (BookedLessons.CalendarIn(all).Method!, BookedLessons.EventIn(all).Sequence));
    }

    [Fact]
    public async Task The_rest_of_a_row_called_off_is_one_letter_and_leaves_what_was_given_in_the_calendar()
    {
        var (lessons, alma) = await Scene();
        var series = await lessons.BookRow(Start, 4, alma);
        await lessons.Sent();
        await lessons.CancelRow(series, from: 1);

        var mail = Assert.Single(await lessons.Sent());

        Assert.Contains("these lessons are cancelled", mail.TextBody, StringComparison.Ordinal);
        Assert.Contains("and 2 more", mail.Subject, StringComparison.Ordinal);
        var row = BookedLessons.EventIn(mail);
        Assert.Equal(("REQUEST", 1, "CONFIRMED"), (BookedLessons.CalendarIn(mail).Method!, row.Sequence, row.Status));
        Assert.Equal(Start.ToDateTimeUnspecified(), Assert.Single(row.GetOccurrences()).Period.StartTime.Value);
    }

    [Fact]
    public async Task A_guest_of_one_day_of_a_row_knows_no_row()
    {
        var (lessons, alma) = await Scene();
        var ben = await lessons.Office.Register(AStudent.Named("Ben", "Reed") with { Email = "ben@example.org" });
        var series = await lessons.BookRow(Start, 4, alma);
        await lessons.Sent();
        var second = await lessons.Office.Read(db => db.Bookings.Where(b => b.SeriesId == series).OrderBy(b => b.Starts).Select(b => b.Id).Skip(1).FirstAsync());
        await lessons.Join(second, ben);

        var invited = BookedLessons.EventIn(Assert.Single(await lessons.Sent()));

        Assert.Equal(($"booking-{second.Value:N}@localhost", true), (invited.Uid, invited.RecurrenceIdentifier is null));
    }

    [Fact]
    public async Task An_offer_to_who_waits_names_its_end_and_is_not_sent_after_it()
    {
        var (lessons, alma) = await Scene();
        var ben = await lessons.Office.Register(AStudent.Named("Ben", "Reed") with { Email = "ben@example.org" });
        var booking = await lessons.Book(Start, alma);
        await lessons.Sent();
        await Offer(lessons, booking, ben, 1);

        var mail = Assert.Single(await lessons.Sent());

        Assert.Equal("ben@example.org", mail.To.Mailboxes.Single().Address);
        Assert.Contains("until Monday 2 March 2026, 11:02 (Europe/London)", mail.TextBody, StringComparison.Ordinal);
        Assert.DoesNotContain(mail.BodyParts, p => p.ContentType.MimeType == "text/calendar");
        await Offer(lessons, booking, await lessons.Office.Register(AStudent.Named("Late", "Reed") with { Email = "late@example.org" }), 2);
        lessons.Office.Time.Advance(TimeSpan.FromHours(3));
        Assert.Empty(await lessons.Sent());
    }

    private static Task Offer(BookedLessons lessons, BookingId booking, StudentId student, int number) => lessons.Do(async (db, messages) =>
    {
        var found = await db.Bookings.Include(b => b.Seats).SingleAsync(b => b.Id == booking);
        var until = lessons.Office.Now + Duration.FromHours(2);
        var seat = found.Seat(SeatId.From(new SeededIds(number + 100).Next()), student, new SeatTerms(4500, 0, until), lessons.Office.Now);
        var waiting = WaitingPlace.Join(new SeededIds(number + 200).Next(), student, new WaitingWish(found.OfferingId, null, booking, new LocalDate(2026, 3, 30), new LocalDate(2026, 3, 30)), lessons.Office.Now);
        waiting.Offer(seat.Id, until);
        db.Add(waiting);
        await messages.Offered(waiting, found);
    });

    private async Task<(BookedLessons Lessons, StudentId Alma)> Scene()
    {
        var lessons = await BookedLessons.Of(await fixture.Another(opened: true));
        return (lessons, await lessons.Office.Register(AStudent.Named("Alma", "Reed") with { Email = "alma.reed@example.org" }));
    }
}

public sealed class InvitedPeopleOnSqlite(SqliteOffice office) : InvitedPeopleTests(office), IClassFixture<SqliteOffice>;

public sealed class InvitedPeopleOnPostgreSql(PostgreSqlOffice office) : InvitedPeopleTests(office), IClassFixture<PostgreSqlOffice>;

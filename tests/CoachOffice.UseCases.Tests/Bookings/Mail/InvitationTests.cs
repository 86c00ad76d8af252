using System.Text.RegularExpressions;
using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Students;
using CoachOffice.SeedDemo.Builders;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.FollowUps;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;
using MimeKit;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Bookings.Mail;

/// <summary>Invitations by mail: RFC 5546 (what is sent when) and RFC 6047 (how it lies in the mail).</summary>
public abstract class InvitationTests(OfficeFixture fixture)
{
    private static readonly LocalDateTime Start = new(2026, 3, 30, 9, 0);

    /// <summary>RFC 6047 section 2.4: the part's method is the object's METHOD; one object in one mail.</summary>
    [Fact]
    public async Task A_booking_is_said_in_words_and_as_a_calendar_entry()
    {
        var (lessons, alma) = await Scene();
        var booking = await lessons.Book(Start, alma);

        var mail = Assert.Single(await lessons.Sent());

        Assert.Equal("Harbour Road Golf Practice: Golf hour, Monday 30 March 2026, 09:00 to 10:00 (Europe/London)", mail.Subject);
        Assert.Equal(["text/plain", "text/html", "text/calendar"], Assert.IsType<MultipartAlternative>(mail.Body).Select(p => p.ContentType.MimeType));
        var part = Lessons.PartOf(mail);
        Assert.Equal(("REQUEST", "utf-8"), (part.ContentType.Parameters["method"], part.ContentType.Charset));
        var calendar = Lessons.CalendarIn(mail);
        Assert.Equal("REQUEST", calendar.Method);
        var said = Assert.Single(calendar.Events);
        Assert.Equal(($"booking-{booking.Value:N}@localhost", 0, "CONFIRMED", "Golf hour with Carl Coach", "Harbour Road range, 1 Harbour Road"), (said.Uid, said.Sequence, said.Status, said.Summary, said.Location));
        Assert.Equal(Instant.FromUtc(2026, 3, 30, 8, 0), Instant.FromDateTimeUtc(said.DtStart!.AsUtc));
        Assert.Equal(("mailto:office@harbour-road.example", "mailto:alma.reed@example.org"), (said.Organizer!.Value!.ToString(), said.Attendees.Single().Value!.ToString()));
        Assert.Contains("GBP\u00A045.00", mail.TextBody, StringComparison.Ordinal);
        Assert.Contains("free until Sunday 29 March 2026, 09:00 (Europe/London); after that GBP\u00A022.50 is owed.", mail.TextBody, StringComparison.Ordinal);
        Assert.Null(mail.Headers[HeaderId.ListUnsubscribe]);
    }

    [Fact]
    public async Task The_link_in_it_opens_the_students_own_lessons_and_is_kept_nowhere()
    {
        var (lessons, alma) = await Scene();
        await lessons.Book(Start, alma);

        var mail = Assert.Single(await lessons.Sent());

        var token = Regex.Match(mail.TextBody!, "/v/(?<token>[A-Za-z0-9_-]{43})", RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(1)).Groups["token"].Value;
        Assert.Equal(alma, (await lessons.Office.Do((PrivateLinks links) => links.OpenVisits(token)))!.StudentId);
        Assert.DoesNotContain(token, Lessons.PartOf(mail).Text, StringComparison.Ordinal);
        Assert.DoesNotContain(await TextSearch.Everywhere(lessons.Office, token), _ => true);
    }

    /// <summary>RFC 5545 3.8.7.4 and RFC 5546 2.1.4: made 0, a name put right 0, moved 1, moved again 2, cancelled 3; the UID stays.</summary>
    [Fact]
    public async Task The_revision_grows_with_each_change_that_matters_and_the_name_of_the_entry_stays()
    {
        var (lessons, alma) = await Scene();
        var booking = await lessons.Book(Start, alma);
        var mails = new List<MimeMessage>(await lessons.Sent());
        await lessons.Office.Change(db => db.Offerings.ExecuteUpdateAsync(o => o.SetProperty(x => x.Name, "Golf lesson")));
        await lessons.Move(booking, Start.PlusHours(2));
        mails.AddRange(await lessons.Sent());
        await lessons.Move(booking, Start.PlusDays(1));
        mails.AddRange(await lessons.Sent());
        await lessons.Cancel(booking);
        mails.AddRange(await lessons.Sent());

        var events = mails.Select(Lessons.EventIn).ToList();
        Assert.Equal([0, 1, 2, 3], events.Select(e => e.Sequence));
        Assert.Single(events.Select(e => e.Uid).Distinct());
        Assert.Equal(["REQUEST", "REQUEST", "REQUEST", "CANCEL"], mails.Select(m => Lessons.CalendarIn(m).Method!));
        Assert.Equal("CANCELLED", events[3].Status);
        Assert.Equal(events.Select(e => e.DtStamp!.AsUtc).Order(), events.Select(e => e.DtStamp!.AsUtc));
        Assert.Contains("was changed", mails[1].TextBody, StringComparison.Ordinal);
        Assert.Contains("Nothing is owed", mails[3].TextBody, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Two_changes_within_two_minutes_are_one_letter_and_a_slip_taken_back_is_none()
    {
        var (lessons, alma) = await Scene();
        var booking = await lessons.Book(Start, alma);
        await lessons.Move(booking, Start.PlusHours(2));
        var slip = await lessons.Book(Start.PlusDays(7), alma);
        await lessons.Cancel(slip);

        var mail = Assert.Single(await lessons.Sent());

        Assert.Equal((1, "11:00"), (Lessons.EventIn(mail).Sequence, Lessons.EventIn(mail).DtStart!.Time.ToString()));
        Assert.DoesNotContain("was changed", mail.TextBody, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_cancellation_taken_back_in_time_is_silent_and_one_taken_back_late_invites_again()
    {
        var (lessons, alma) = await Scene();
        var booking = await lessons.Book(Start, alma);
        await lessons.Sent();
        await lessons.Cancel(booking);
        await lessons.TakeBack(booking);
        Assert.Empty(await lessons.Sent());
        await lessons.Cancel(booking);
        Assert.Equal(3, Lessons.EventIn(Assert.Single(await lessons.Sent())).Sequence);
        await lessons.TakeBack(booking);

        var again = Lessons.EventIn(Assert.Single(await lessons.Sent()));

        Assert.Equal((4, "CONFIRMED"), (again.Sequence, again.Status));
    }

    [Fact]
    public async Task Who_leaves_a_group_and_comes_back_hears_ever_higher_revisions_and_the_rest_nothing()
    {
        var (lessons, alma) = await Scene();
        var ben = await lessons.Office.Register(AStudent.Named("Ben", "Reed") with { Email = "ben@example.org" });
        var booking = await lessons.Book(Start, alma, ben);
        Assert.Equal(2, (await lessons.Sent()).Count);
        await lessons.Cancel(booking, alma);
        var left = Assert.Single(await lessons.Sent());
        await lessons.Join(booking, alma);
        var back = Assert.Single(await lessons.Sent());

        Assert.Equal(("CANCEL", 1, "alma.reed@example.org"), (Lessons.CalendarIn(left).Method!, Lessons.EventIn(left).Sequence, left.To.Mailboxes.Single().Address));
        Assert.Equal(("REQUEST", 2), (Lessons.CalendarIn(back).Method!, Lessons.EventIn(back).Sequence));
        await lessons.Cancel(booking);
        Assert.Equal([1, 3], (await lessons.Sent()).Select(m => Lessons.EventIn(m).Sequence).Order());
        Assert.All([left, back], m => Assert.DoesNotContain("Ben", m.ToString(), StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_late_cancellation_says_what_it_came_to()
    {
        var (lessons, alma) = await Scene();
        var booking = await lessons.Book(new LocalDateTime(2026, 3, 2, 18, 0), alma);
        await lessons.Sent();
        await lessons.Cancel(booking, how: SeatStatus.CancelledLate);

        var mail = Assert.Single(await lessons.Sent());

        Assert.Contains("The notice of 24 hours was over, so GBP\u00A022.50 is owed.", mail.TextBody, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_minors_letter_goes_to_the_guardian_who_is_the_one_invited()
    {
        var (lessons, _) = await Scene();
        await lessons.Book(Start, await lessons.Office.Register(AStudent.Junior("Kit", "Marsh")));

        var mail = Assert.Single(await lessons.Sent());

        Assert.Equal("mara.marsh@example.org", mail.To.Mailboxes.Single().Address);
        Assert.Equal("mailto:mara.marsh@example.org", Lessons.EventIn(mail).Attendees.Single().Value!.ToString());
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

        var rows = await lessons.Office.Read(db => db.Messages.OrderBy(m => m.CreatedAt).Select(m => new { m.Kind, m.State, m.LastProblem }).ToListAsync());
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
        Assert.Equal(("FREQ=WEEKLY;COUNT=4", 0), (Lessons.EventIn(booked).RecurrenceRule!.ToString(), Lessons.EventIn(booked).Sequence));
        Assert.Single(new[] { booked, moved, one, all }.Select(m => Lessons.EventIn(m).Uid).Distinct());
        Assert.Equal((new DateTime(2026, 4, 6, 9, 0, 0), 1, "REQUEST"), (Lessons.EventIn(moved).RecurrenceIdentifier!.StartTime.Value, Lessons.EventIn(moved).Sequence, Lessons.CalendarIn(moved).Method!));
        Assert.Equal((new DateTime(2026, 4, 13, 9, 0, 0), 1, "CANCEL"), (Lessons.EventIn(one).RecurrenceIdentifier!.StartTime.Value, Lessons.EventIn(one).Sequence, Lessons.CalendarIn(one).Method!));
        Assert.Null(Lessons.EventIn(all).RecurrenceIdentifier);
        Assert.Equal(("CANCEL", 2), (Lessons.CalendarIn(all).Method!, Lessons.EventIn(all).Sequence));
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

        var invited = Lessons.EventIn(Assert.Single(await lessons.Sent()));

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

    private static Task Offer(Lessons lessons, BookingId booking, StudentId student, int number) => lessons.Do(async (db, messages) =>
    {
        var found = await db.Bookings.Include(b => b.Seats).SingleAsync(b => b.Id == booking);
        var until = lessons.Office.Now + Duration.FromHours(2);
        var seat = found.Seat(SeatId.From(new SeededIds(number + 100).Next()), student, new SeatTerms(4500, 0, until), lessons.Office.Now);
        var waiting = WaitingPlace.Join(new SeededIds(number + 200).Next(), student, new WaitingWish(found.OfferingId, null, booking, new LocalDate(2026, 3, 30), new LocalDate(2026, 3, 30)), lessons.Office.Now);
        waiting.Offer(seat.Id, until);
        db.Add(waiting);
        await messages.Offered(waiting, found);
    });

    private async Task<(Lessons Lessons, StudentId Alma)> Scene()
    {
        var lessons = await Lessons.Of(await fixture.Another(opened: true));
        return (lessons, await lessons.Office.Register(AStudent.Named("Alma", "Reed") with { Email = "alma.reed@example.org" }));
    }
}

public sealed class InvitationOnSqlite(SqliteOffice office) : InvitationTests(office), IClassFixture<SqliteOffice>;

public sealed class InvitationOnPostgreSql(PostgreSqlOffice office) : InvitationTests(office), IClassFixture<PostgreSqlOffice>;

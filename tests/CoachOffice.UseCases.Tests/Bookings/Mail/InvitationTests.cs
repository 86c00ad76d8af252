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
        var part = BookedLessons.PartOf(mail);
        Assert.Equal(("REQUEST", "utf-8"), (part.ContentType.Parameters["method"], part.ContentType.Charset));
        var calendar = BookedLessons.CalendarIn(mail);
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
        Assert.DoesNotContain(token, BookedLessons.PartOf(mail).Text, StringComparison.Ordinal);
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

        var events = mails.Select(BookedLessons.EventIn).ToList();
        Assert.Equal([0, 1, 2, 3], events.Select(e => e.Sequence));
        Assert.Single(events.Select(e => e.Uid).Distinct());
        Assert.Equal(["REQUEST", "REQUEST", "REQUEST", "CANCEL"], mails.Select(m => BookedLessons.CalendarIn(m).Method!));
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

        Assert.Equal((1, "11:00"), (BookedLessons.EventIn(mail).Sequence, BookedLessons.EventIn(mail).DtStart!.Time.ToString()));
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
        Assert.Equal(3, BookedLessons.EventIn(Assert.Single(await lessons.Sent())).Sequence);
        await lessons.TakeBack(booking);

        var again = BookedLessons.EventIn(Assert.Single(await lessons.Sent()));

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

        Assert.Equal(("CANCEL", 1, "alma.reed@example.org"), (BookedLessons.CalendarIn(left).Method!, BookedLessons.EventIn(left).Sequence, left.To.Mailboxes.Single().Address));
        Assert.Equal(("REQUEST", 2), (BookedLessons.CalendarIn(back).Method!, BookedLessons.EventIn(back).Sequence));
        await lessons.Cancel(booking);
        Assert.Equal([1, 3], (await lessons.Sent()).Select(m => BookedLessons.EventIn(m).Sequence).Order());
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

    private async Task<(BookedLessons Lessons, StudentId Alma)> Scene()
    {
        var lessons = await BookedLessons.Of(await fixture.Another(opened: true));
        return (lessons, await lessons.Office.Register(AStudent.Named("Alma", "Reed") with { Email = "alma.reed@example.org" }));
    }
}

public sealed class InvitationOnSqlite(SqliteOffice office) : InvitationTests(office), IClassFixture<SqliteOffice>;

public sealed class InvitationOnPostgreSql(PostgreSqlOffice office) : InvitationTests(office), IClassFixture<PostgreSqlOffice>;

using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Bookings.Calendars;
using CoachOffice.UseCases.FollowUps;
using CoachOffice.UseCases.FollowUps.Texts;
using MimeKit;

namespace CoachOffice.UseCases.Bookings.Mail;

/// <summary>Reminds of a lesson. Both its links open a page with one button: programs that look through mail follow links, and nothing is decided by that.</summary>
public sealed class ReminderLetter(ReadStudentLessons read, BookingSurroundings around, Letters letters) : ITextLetter
{
    /// <inheritdoc/>
    public IReadOnlyList<MessageKind> Kinds { get; } = [MessageKind.LessonReminder];

    /// <inheritdoc/>
    public bool MayRepeat => true;

    /// <inheritdoc/>
    public async Task<SendingVerdict> MayGo(OfficeFacts facts, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(facts);
        if (await Coming(facts, stop) is not { } lessons) return new SendingVerdict.Never(BookingProblems.Past);
        if (lessons.SeatIn(lessons.Lessons[0]).ComingAt is not null) return new SendingVerdict.Never("answered");
        return facts.StudentsMail is null && WaysOfText.Number(facts) is null ? new SendingVerdict.Never(BookingProblems.NoMail) : new SendingVerdict.Go();
    }

    /// <inheritdoc/>
    public Task<MailRecipient?> Recipient(OfficeFacts facts, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(facts);
        return Task.FromResult(facts.StudentsMail);
    }

    /// <inheritdoc/>
    public async Task<MimeMessage> Write(OfficeFacts facts, MailRecipient recipient, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(facts);
        ArgumentNullException.ThrowIfNull(recipient);
        var lessons = await Coming(facts, stop) ?? throw new InvalidOperationException("The lesson went away between two looks.");
        var (lesson, terms) = (lessons.Lessons[0], await around.Terms(stop));
        var said = around.Of(facts, recipient, [lesson]);
        said = said with
        {
            Terms = BookingWords.Terms(terms, lesson.Booking, lessons.SeatIn(lesson), BookingSurroundings.CurrencyOf(facts)),
            ComingLink = $"{said.Link}/coming/{lesson.Booking.Id.Value:N}",
            CancelLink = $"{said.Link}/cancel/{lesson.Booking.Id.Value:N}",
        };
        return MailForm.Of(letters.Render(facts.Message.Kind, said, facts.Words), OfficeEnvelopes.For(facts, recipient));
    }

    /// <inheritdoc/>
    public async Task<string> Words(OfficeFacts facts, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(facts);
        var lessons = await Coming(facts, stop) ?? throw new InvalidOperationException("The lesson went away between two looks.");
        return around.InBrief(facts, "a reminder of the lesson on", lessons.Lessons[0]);
    }

    /// <inheritdoc/>
    public Task<string> Addressee(Message message, CancellationToken stop) => Task.FromResult("");

    // Of a lesson that has begun nobody is reminded, however late the message comes to its turn.
    private async Task<StudentLessons?> Coming(OfficeFacts facts, CancellationToken stop) =>
        await read.For(facts.Message, stop) is { IsRow: false } lessons && lessons.On(facts.Now) is [var lesson] && lesson.Booking.Starts > facts.Now ? lessons : null;
}

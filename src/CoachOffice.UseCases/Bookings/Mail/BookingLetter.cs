using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.FollowUps;
using CoachOffice.UseCases.FollowUps.Texts;
using MimeKit;

namespace CoachOffice.UseCases.Bookings.Mail;

/// <summary>
/// Invitations and cancellations (RFC 5546 by mail as in RFC 6047). What they say is looked up when they go: a booking changed twice in a minute is told
/// once, as it stands. Sent twice they do no harm, as the calendar knows the same UID and SEQUENCE.
/// </summary>
public sealed class BookingLetter(ReadStudentLessons read, BookingSurroundings around, Letters letters) : ITextLetter
{
    /// <inheritdoc/>
    public IReadOnlyList<MessageKind> Kinds { get; } = [MessageKind.BookingInvitation, MessageKind.BookingCancelled];

    /// <inheritdoc/>
    public bool MayRepeat => true;

    /// <inheritdoc/>
    public async Task<SendingVerdict> MayGo(OfficeFacts facts, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(facts);
        if (await read.For(facts.Message, stop) is not { } lessons) return new SendingVerdict.Never(BookingProblems.Past);
        var cancels = facts.Message.Kind == MessageKind.BookingCancelled;
        var about = cancels ? lessons.Off(facts.Now) : lessons.On(facts.Now);
        if (about.Count == 0) return new SendingVerdict.Never(BookingProblems.Past);

        // Who has no address and just booked knows of it; who has to learn of a change is told by a person.
        var isNew = !cancels && about.All(l => l.Booking.Sequence == 0);
        return facts.StudentsMail is null && WaysOfText.Number(facts) is null && isNew ? new SendingVerdict.Never(BookingProblems.NoMail) : new SendingVerdict.Go();
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
        var lessons = await read.For(facts.Message, stop) ?? throw new InvalidOperationException("The booking went away between two looks.");
        var cancels = facts.Message.Kind == MessageKind.BookingCancelled;
        var about = cancels ? lessons.Off(facts.Now) : lessons.On(facts.Now);
        var (terms, currency, seat) = (await around.Terms(stop), BookingSurroundings.CurrencyOf(facts), lessons.SeatIn(about[0]));
        var said = around.Of(facts, recipient, about) with
        {
            Price = cancels ? "" : BookingWords.Price(seat, currency),
            Terms = cancels ? BookingWords.Outcome(terms, about[0].Booking, seat, currency) : BookingWords.Terms(terms, about[0].Booking, seat, currency),
            Changed = !cancels && await read.WasTold(facts.Message, stop),
        };
        var calendar = Invitations.Of(lessons, new InvitationFacts(facts, recipient, cancels));
        return MailForm.Of(letters.Render(facts.Message.Kind, said, facts.Words), OfficeEnvelopes.For(facts, recipient), calendar);
    }

    /// <inheritdoc/>
    public async Task<string> Words(OfficeFacts facts, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(facts);
        var lessons = await read.For(facts.Message, stop) ?? throw new InvalidOperationException("The booking went away between two looks.");
        var cancels = facts.Message.Kind == MessageKind.BookingCancelled;
        var about = cancels ? lessons.Off(facts.Now) : lessons.On(facts.Now);
        var more = about.Count == 1 ? "" : $" (and {about.Count - 1} more)";
        var moved = !cancels && await read.WasTold(facts.Message, stop);
        return around.InBrief(facts, $"lesson {(cancels ? "cancelled" : moved ? "moved" : "booked")}{more},", about[0]);
    }

    /// <inheritdoc/>
    public Task<string> Addressee(Message message, CancellationToken stop) => Task.FromResult("");
}

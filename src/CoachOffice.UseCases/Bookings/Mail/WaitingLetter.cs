using CoachOffice.Data;
using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.FollowUps;
using CoachOffice.UseCases.FollowUps.Texts;
using Microsoft.EntityFrameworkCore;
using MimeKit;

namespace CoachOffice.UseCases.Bookings.Mail;

/// <summary>Tells who waits that a place is kept for them, and until when.</summary>
public sealed class WaitingLetter(OfficeDb db, ReadStudentLessons read, BookingSurroundings around, Letters letters) : ITextLetter
{
    /// <inheritdoc/>
    public IReadOnlyList<MessageKind> Kinds { get; } = [MessageKind.WaitingOffer];

    /// <inheritdoc/>
    public bool MayRepeat => true;

    /// <inheritdoc/>
    public async Task<SendingVerdict> MayGo(OfficeFacts facts, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(facts);
        return await Offer(facts, stop) is null ? new SendingVerdict.Never("offer-over") : new SendingVerdict.Go();
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
        var lessons = await read.For(facts.Message, stop);
        if (lessons is null || await Offer(facts, stop) is not { } offer) throw new InvalidOperationException("The offer ended between two looks.");
        var lesson = lessons.Lessons[0];
        var said = around.Of(facts, recipient, lessons.Lessons) with
        {
            Price = BookingWords.Price(lessons.SeatIn(lesson), BookingSurroundings.CurrencyOf(facts)),
            Until = BookingWords.Moment(offer.OfferedUntil!.Value, lesson.Booking.Zone),
        };
        return MailForm.Of(letters.Render(facts.Message.Kind, said, facts.Words), OfficeEnvelopes.For(facts, recipient));
    }

    /// <inheritdoc/>
    public async Task<string> Words(OfficeFacts facts, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(facts);
        var lessons = await read.For(facts.Message, stop);
        if (lessons is null || await Offer(facts, stop) is not { } offer) throw new InvalidOperationException("The offer ended between two looks.");
        return around.InBrief(facts, $"a place is free, kept until {BookingWords.Moment(offer.OfferedUntil!.Value, lessons.Lessons[0].Booking.Zone)}:", lessons.Lessons[0]);
    }

    /// <inheritdoc/>
    public Task<string> Addressee(Message message, CancellationToken stop) => Task.FromResult("");

    // The offer that keeps a seat of this booking for the student now.
    private async Task<WaitingPlace?> Offer(OfficeFacts facts, CancellationToken stop)
    {
        if (facts.Message is not { StudentId: { } student, SubjectId: { } subject }) return null;
        var booking = BookingId.From(subject);
        var seats = await db.Seats.Where(s => s.BookingId == booking && s.StudentId == student && s.Status == SeatStatus.Held).Select(s => s.Id).ToListAsync(stop);
        var offers = await db.WaitingPlaces.AsNoTracking().Where(w => w.StudentId == student && w.Status == WaitingStatus.Offered && w.OfferedUntil > facts.Now).ToListAsync(stop);
        return offers.FirstOrDefault(o => o.OfferedSeat is { } seat && seats.Contains(seat));
    }
}

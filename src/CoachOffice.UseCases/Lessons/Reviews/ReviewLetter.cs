using System.Globalization;
using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Lessons.Reviews;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.FollowUps;
using Microsoft.EntityFrameworkCore;
using MimeKit;
using NodaTime;

namespace CoachOffice.UseCases.Lessons.Reviews;

/// <summary>Letters about remote reviews: to the student that the clips came in, with the promise in the student's zone; to the coach a day before the promise, in the practice's; to the student once when the promise is past.</summary>
public sealed class ReviewLetter(OfficeDb db, PrivateLinks links, Letters letters) : IOfficeLetter
{
    /// <inheritdoc/>
    public IReadOnlyList<MessageKind> Kinds { get; } = [MessageKind.ReviewReceived, MessageKind.ReviewDue, MessageKind.ReviewLate];

    /// <inheritdoc/>
    public bool MayRepeat => true;

    /// <inheritdoc/>
    public async Task<SendingVerdict> MayGo(OfficeFacts facts, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(facts);
        return await Review(facts.Message, stop) is { IsOpen: true } ? new SendingVerdict.Go() : new SendingVerdict.Never("answered");
    }

    /// <inheritdoc/>
    public async Task<MailRecipient?> Recipient(OfficeFacts facts, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(facts);
        return facts.Message.Kind != MessageKind.ReviewDue ? facts.StudentsMail : await Coach((await Review(facts.Message, stop))!, stop);
    }

    /// <inheritdoc/>
    public async Task<MimeMessage> Write(OfficeFacts facts, MailRecipient recipient, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(facts);
        ArgumentNullException.ThrowIfNull(recipient);
        var review = await Review(facts.Message, stop) ?? throw new InvalidOperationException("The review went away between two looks.");
        var toStudent = facts.Message.Kind != MessageKind.ReviewDue;
        var address = facts.Practice.PublicAddress;
        var said = new ReviewLetterFacts
        {
            Greeting = CleanText.Line(recipient.IsGuardian || !toStudent ? recipient.Name : facts.Student!.GivenName),
            Student = CleanText.Line(toStudent ? facts.Student!.GivenName : facts.Student!.FullName),
            ForGuardian = recipient.IsGuardian,
            OpensLessons = toStudent,
            Practice = CleanText.Line(facts.Practice.Name),
            Club = Terms.Of(review.Club),
            Promised = Moment(review.PromisedBy, toStudent ? review.Zone : facts.Practice.Zone),
            Coach = CleanText.Line((await Coach(review, stop))?.Name ?? facts.Practice.Name),
            Link = toStudent ? $"{address}/v/{links.MintVisits(review.StudentId, IssueVisitLink.Life)}" : $"{address}/reviews",
        };
        return MailForm.Of(letters.Render(facts.Message.Kind, said, facts.Words), OfficeEnvelopes.For(facts, recipient));
    }

    /// <inheritdoc/>
    public Task<string> Addressee(Message message, CancellationToken stop) => Task.FromResult("");

    private Task<RemoteReview?> Review(Message message, CancellationToken stop)
    {
        var id = ReviewId.From(message.SubjectId!.Value);
        return db.RemoteReviews.AsNoTracking().SingleOrDefaultAsync(r => r.Id == id, stop);
    }

    // Whoever has it; before anybody opened it, who could: the offering's first coach who still signs in.
    private async Task<MailRecipient?> Coach(RemoteReview review, CancellationToken stop)
    {
        IReadOnlyList<AccountId> could = review.CoachId is { } one ? [one] : (await db.Offerings.AsNoTracking().SingleAsync(o => o.Id == review.OfferingId, stop)).Coaches;
        var ids = could.Select(c => c.Value).ToList();
        var there = await db.Users.Where(u => ids.Contains(u.Id) && u.DisabledAt == null && u.Email != null).Select(u => new { u.Id, u.DisplayName, u.Email }).ToListAsync(stop);
        return ids.Select(id => there.Find(u => u.Id == id)).FirstOrDefault(u => u is not null) is { } coach ? new MailRecipient(coach.DisplayName, coach.Email!, false) : null;
    }

    private static string Moment(Instant at, string zone) => $"{at.InZone(DateTimeZoneProviders.Tzdb[zone]).ToString("dddd d MMMM, HH:mm", CultureInfo.InvariantCulture)} ({zone} time)";
}

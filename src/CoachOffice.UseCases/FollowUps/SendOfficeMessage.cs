using CoachOffice.Data;
using CoachOffice.Data.FollowUps;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.FollowUps.Texts;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>Asks the family of a claimed message without a plan whether and to whom it goes; what does not go now is noted at once.</summary>
public sealed class SendOfficeMessage(OfficeDb db, IOutbox outbox, OfficeLetters letters, MessageSurroundings around, DepartureOf goes)
{
    /// <summary>What decides about messages, read for all of them at once.</summary>
    public async Task<IReadOnlyDictionary<Guid, OfficeFacts>> Facts(IReadOnlyList<Message> messages, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(messages);
        if (messages.Count == 0) return new Dictionary<Guid, OfficeFacts>();
        var ids = messages.Select(m => m.StudentId).OfType<StudentId>().Distinct().ToList();
        var students = await db.Students.AsNoTracking().Where(s => ids.Contains(s.Id)).ToDictionaryAsync(s => s.Id, stop);
        var (practice, now, dates, bounced) = await around.Now(stop);
        return messages.ToDictionary(m => m.Id, m => new OfficeFacts
        {
            Message = m,
            Student = m.StudentId is { } student ? students[student] : null,
            Practice = practice,
            Now = now,
            Dates = dates,
            Bounced = bounced,
        });
    }

    /// <summary>What came of it, or how it goes.</summary>
    public async Task<Preparation> Prepare(OfficeFacts facts, Sending sending, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(facts);
        ArgumentNullException.ThrowIfNull(sending);
        if (letters.Of(facts.Message.Kind) is not { } family) return Preparation.Ended(await outbox.Ask(sending, "no-letter", stop));
        var recipient = (MailRecipient?)null;
        var verdict = OfficeLaw.Before(facts, family.MayRepeat) ?? await family.MayGo(facts, stop);
        if (verdict is SendingVerdict.Go) verdict = OfficeLaw.After(facts, recipient = TextRoute.Reader(facts, family) ?? await family.Recipient(facts, stop)) ?? verdict;
        switch (verdict)
        {
            case SendingVerdict.Never never:
                await outbox.Skip(sending, never.Why, stop);
                return Preparation.Ended(SendingResult.Skipped);
            case SendingVerdict.Later later:
                await outbox.PutOff(sending, later.Again, stop);
                return Preparation.Ended(SendingResult.PutOff);
            case SendingVerdict.Ask ask:
                return Preparation.Ended(await outbox.Ask(sending, ask.Problem, stop));
            default:
                return Preparation.Of(goes.By(family, facts, recipient!, stop));
        }
    }
}

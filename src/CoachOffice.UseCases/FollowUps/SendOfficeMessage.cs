using CoachOffice.Data;
using CoachOffice.Data.FollowUps;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Students;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>Carries one claimed message without a plan to its end: its family says whether and to whom it goes and writes it.</summary>
public sealed class SendOfficeMessage(OfficeDb db, IOutbox outbox, OfficeLetters letters, PracticeClock clock, MailDispatch dispatch)
{
    /// <summary>What came of it.</summary>
    public async Task<SendingResult> Of(Message message, Sending sending, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(message);
        ArgumentNullException.ThrowIfNull(sending);
        db.ChangeTracker.Clear();
        if (letters.Of(message.Kind) is not { } family) return await Ask(sending, "no-letter", stop);
        var facts = await Facts(message, stop);
        var recipient = (MailRecipient?)null;
        var verdict = OfficeLaw.Before(facts, family.MayRepeat) ?? await family.MayGo(facts, stop);
        if (verdict is SendingVerdict.Go) verdict = OfficeLaw.After(facts, recipient = await family.Recipient(facts, stop)) ?? verdict;
        switch (verdict)
        {
            case SendingVerdict.Never never:
                await outbox.Skip(sending, never.Why, stop);
                return SendingResult.Skipped;
            case SendingVerdict.Later later:
                await outbox.PutOff(sending, later.Again, stop);
                return SendingResult.PutOff;
            case SendingVerdict.Ask ask:
                return await Ask(sending, ask.Problem, stop);
            default:
                return await dispatch.Of(new Departure(message, facts.Practice, family.MayRepeat, () => family.Write(facts, recipient!, stop)), sending, stop);
        }
    }

    private async Task<SendingResult> Ask(Sending sending, string problem, CancellationToken stop)
    {
        await outbox.MarkFailed(sending, problem, null, stop);
        return SendingResult.NeedsAttention;
    }

    private async Task<OfficeFacts> Facts(Message message, CancellationToken stop) => new()
    {
        Message = message,
        Student = message.StudentId is { } student ? await db.Students.AsNoTracking().SingleAsync(s => s.Id == student, stop) : null,
        Practice = await db.Practices.AsNoTracking().SingleAsync(stop),
        Now = clock.Now,
        Dates = new FollowUpDates(await clock.Zone(stop)),
    };
}

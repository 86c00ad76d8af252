using CoachOffice.Data;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.FollowUps;
using CoachOffice.UseCases.FollowUps.Bounces;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>What is the same for all messages claimed together.</summary>
public sealed class MessageSurroundings(OfficeDb db, PracticeClock clock, BouncedAddresses bounced, ReadMessageRules rules)
{
    /// <summary>The practice, the time, its dates, and the addresses that came back.</summary>
    public async Task<(Practice Practice, Instant Now, FollowUpDates Dates, IReadOnlySet<string> Bounced)> Now(CancellationToken stop) =>
        (await db.Practices.AsNoTracking().SingleAsync(stop), clock.Now, new FollowUpDates(await clock.Zone(stop)), await bounced.Now(stop));

    /// <summary>The words each goes out in; null for the shipped ones.</summary>
    public Task<IReadOnlyDictionary<Guid, LetterWords?>> WordsOf(IReadOnlyList<Message> messages, CancellationToken stop) => rules.WordsOf(messages, stop);
}

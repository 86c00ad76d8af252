using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.FollowUps;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.FollowUps.Wordings;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>Gives one message a coach's own words, held to the same rules as those of its kind; or takes them away again.</summary>
public sealed class SayInOwnWords(OfficeDb db, MessageDoor door, CheckWording check)
{
    /// <summary>The message's id, or why not.</summary>
    /// <param name="message">Which.</param>
    /// <param name="words">Null: the words of its kind again.</param>
    /// <param name="actor">Who.</param>
    /// <param name="stop">Ends the call early.</param>
    public async Task<Outcome<Guid>> To(Guid message, LetterWords? words, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayTeach) return NotAllowed.To("change the words of messages");
        var clean = words is null ? null : LetterWords.Of(words.AsTemplate);
        if (clean is not null && await db.Messages.Where(m => m.Id == message).Select(m => (MessageKind?)m.Kind).SingleOrDefaultAsync(stop) is { } kind
            && check.Of(kind, words! with { Body = clean.Body }) is { Count: > 0 } wrong) return Outcome<Guid>.Refused(wrong);
        return await door.Change(new MessageDeed(message, actor, "message-words", "change the words of messages"), (_, row) => Say(row, clean?.AsTemplate, stop), stop);
    }

    private static async Task<Refusal?> Say(IQueryable<Message> row, string? template, CancellationToken stop)
    {
        await row.ExecuteUpdateAsync(m => m.SetProperty(x => x.OwnWords, template), stop);
        return null;
    }
}

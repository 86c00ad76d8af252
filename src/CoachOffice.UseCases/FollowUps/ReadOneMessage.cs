using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.FollowUps;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.FollowUps.Wordings;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>One message with the words it will go in.</summary>
public sealed class ReadOneMessage(OfficeDb db, ListMessages list, ReadRules rules)
{
    /// <summary>As it stands now.</summary>
    public async Task<Outcome<OneMessage>> Now(Guid id, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayTeach) return NotAllowed.To("see messages");
        if (await db.Messages.AsNoTracking().SingleOrDefaultAsync(m => m.Id == id, stop) is not { } message) return new Refusal("message-not-found", "There is no such message.");
        var row = await list.One(id, stop);
        var rule = await rules.One(message.Kind, actor, stop);
        return rule.TryGet(out var view)
            ? new OneMessage(row, message.OwnWords is { } own ? LetterWords.Of(own) : view.Words, message.OwnWords is not null)
            : Outcome<OneMessage>.Refused(rule.Refusals);
    }
}

/// <summary>A message and its words.</summary>
/// <param name="Row">As listed.</param>
/// <param name="Words">As it will go.</param>
/// <param name="IsOwn">A coach gave this one words of its own.</param>
public sealed record OneMessage(MessageRow Row, LetterWords Words, bool IsOwn);

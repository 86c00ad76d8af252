using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.FollowUps;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.FollowUps.Wordings;

/// <summary>What every decision about a kind of message does alike: right, version, one transaction, an audit row.</summary>
public sealed class RuleDoor(OfficeDb db, AuditTrail trail, PracticeClock clock, INewIds ids)
{
    /// <summary>Now, to the millisecond.</summary>
    public Instant Now => clock.Now;

    /// <summary>A new identifier.</summary>
    public Guid NewId() => ids.Next();

    /// <summary>Runs the change; the new version, or why not.</summary>
    public async Task<Outcome<int>> Change(RuleDeed deed, Func<MessageRule, Task> change, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(deed);
        ArgumentNullException.ThrowIfNull(change);
        if (!deed.Actor.MayOwn) return NotAllowed.To("change how messages go out");
        await using var transaction = await db.Database.BeginTransactionAsync(stop);
        var rule = await db.MessageRules.SingleOrDefaultAsync(r => r.Kind == deed.Kind, stop);
        if (rule is null) db.MessageRules.Add(rule = MessageRule.Usual(ids.Next(), deed.Kind));
        if (rule.Version != deed.Version) return Changed;
        await change(rule);
        trail.Add(deed.Actor, deed.Action, AuditSubject.MessageRule(rule.Id), Terms.Of(deed.Kind));
        if (await db.TrySave(stop) != Saved.Yes) return Changed;
        await transaction.CommitAsync(stop);
        return rule.Version;
    }

    private static Refusal Changed { get; } = new(Clash.Code, "Somebody changed this after you opened the page. Nothing was overwritten: look at it again, then repeat your change.");
}

/// <summary>One decision about a kind of message.</summary>
/// <param name="Kind">Which.</param>
/// <param name="Version">As it was shown; 0 while nobody had decided.</param>
/// <param name="Actor">Who.</param>
/// <param name="Action">The audit row's code.</param>
public sealed record RuleDeed(MessageKind Kind, int Version, Actor Actor, string Action);

using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.FollowUps;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.FollowUps.Wordings;

/// <summary>Shows what the practice decided about its messages, and in which words they go.</summary>
public sealed class ReadRules(OfficeDb db, ReadMessageRules rules, Letters letters)
{
    private const int MostEarlier = 20;

    /// <summary>Every kind, in the order of the list.</summary>
    public async Task<Outcome<IReadOnlyList<RuleView>>> All(Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayTeach) return NotAllowed.To("see how messages go out");
        return Outcome<IReadOnlyList<RuleView>>.Of([.. (await rules.Again(stop)).Values.Select(r => new RuleView(r, letters.Shipped(r.Kind), r.WordingId is not null))]);
    }

    /// <summary>One kind, with its words and the practice's earlier ones.</summary>
    public async Task<Outcome<RuleView>> One(MessageKind kind, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayTeach) return NotAllowed.To("see how messages go out");
        var rule = (await rules.Again(stop))[kind];
        var written = await db.MessageWordings.AsNoTracking().Where(w => w.Kind == kind).OrderByDescending(w => w.WrittenAt).ThenByDescending(w => w.Id).Take(MostEarlier).ToListAsync(stop);
        var own = rule.WordingId is { } id ? await db.MessageWordings.AsNoTracking().SingleAsync(w => w.Id == id, stop) : null;
        return new RuleView(rule, own?.Words ?? letters.Shipped(kind), own is not null) { Earlier = [.. written.Where(w => w.Id != rule.WordingId)] };
    }
}

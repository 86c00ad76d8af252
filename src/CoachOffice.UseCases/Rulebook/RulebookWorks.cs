using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Plans;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>The account's working copy of the rulebook.</summary>
internal static class RulebookWorks
{
    /// <summary>Said when the same account saved from another window at the same moment.</summary>
    public static Refusal Busy { get; } = new(Clash.Code, "Another window of yours saved at the same moment, so nothing was kept here: send it again.");

    /// <summary>As kept; a new one, tracked to be saved, when there was none.</summary>
    public static async Task<RulebookWork> Work(this OfficeDb db, Actor actor, CancellationToken stop)
    {
        var account = actor.Account ?? throw new InvalidOperationException("Only a signed-in person changes rules.");
        if (await db.RulebookWorks.SingleOrDefaultAsync(w => w.Account == account, stop) is { } kept) return kept;
        var work = RulebookWork.Of(account);
        db.RulebookWorks.Add(work);
        return work;
    }

    /// <summary>The same to look at, not to be saved.</summary>
    public static async Task<RulebookWork> WorkSeen(this OfficeDb db, Actor actor, CancellationToken stop)
    {
        var account = actor.Account ?? throw new InvalidOperationException("Only a signed-in person changes rules.");
        return await db.RulebookWorks.AsNoTracking().SingleOrDefaultAsync(w => w.Account == account, stop) ?? RulebookWork.Of(account);
    }
}

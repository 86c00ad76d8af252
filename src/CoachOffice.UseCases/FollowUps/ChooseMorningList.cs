using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>A coach asks for a mail each morning that has something for them, or for no more of them. Nobody else decides that.</summary>
public sealed class ChooseMorningList(OfficeDb db, AuditTrail trail)
{
    /// <summary>What holds now, or why not.</summary>
    public async Task<Outcome<bool>> Set(bool wants, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayTeach || actor.Account is not { } id) return NotAllowed.To("get a list each morning");
        var account = await db.Users.SingleAsync(u => u.Id == id.Value, stop);
        account.WantsMorningList = wants;
        trail.Add(actor, wants ? "morning-list-wanted" : "morning-list-ended", AuditSubject.Of(id));
        await db.SaveChangesAsync(stop);
        return wants;
    }
}

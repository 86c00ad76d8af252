using CoachOffice.Data;
using CoachOffice.Domain.Access;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>Shows what a stop link would stop; changes nothing, because mail scanners open links.</summary>
public sealed class StopPage(OfficeDb db, PrivateLinks links)
{
    /// <summary>What the link allows, or null.</summary>
    public async Task<StopPass?> Of(string token, CancellationToken stop = default)
    {
        if (await links.Open(token, LinkPurpose.StopMessages, stop) is not { } pass) return null;
        var stopped = await db.Students.Where(s => s.Id == pass.StudentId).Select(s => s.MessagesStoppedAt != null).SingleAsync(stop);
        return new StopPass(pass.StudentId, pass.PlanId, await db.Practices.Select(p => p.Name).SingleAsync(stop), stopped);
    }
}

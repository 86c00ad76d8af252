using CoachOffice.Data;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Plans;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Access;

/// <summary>Asked at every request behind a private link: a cookie outlives a revoked link, this does not.</summary>
public sealed class CheckLink(OfficeDb db)
{
    /// <summary>What the link allows at that moment, or null when it ended, or its plan was withdrawn or its student erased.</summary>
    public async Task<LinkPass?> StillOpen(Guid linkId, Instant now, CancellationToken stop = default)
    {
        var found = await (
            from link in db.PrivateLinks.AsNoTracking()
            join plan in db.Plans on link.PlanId equals (PlanId?)plan.Id
            join student in db.Students on link.StudentId equals student.Id
            where link.Id == linkId && student.ErasedAt == null && plan.StudentId == link.StudentId
            select new { link, plan.Status }).SingleOrDefaultAsync(stop);
        if (found is null || !found.link.IsOpenAt(now)) return null;
        var inHand = found.Status is PlanStatus.Active or PlanStatus.OnHold or PlanStatus.Completed;
        return inHand || found.link.Purpose == LinkPurpose.StopMessages
            ? new LinkPass(found.link.StudentId, found.link.PlanId!.Value, found.link.Id)
            : null;
    }

    /// <summary>Whose lessons the link opens at that moment, or null when it ended or its student was erased.</summary>
    public async Task<VisitPass?> StillOpensVisits(Guid linkId, Instant now, CancellationToken stop = default)
    {
        var link = await (
            from found in db.PrivateLinks.AsNoTracking()
            join student in db.Students on found.StudentId equals student.Id
            where found.Id == linkId && found.Purpose == LinkPurpose.Visits && student.ErasedAt == null
            select found).SingleOrDefaultAsync(stop);
        return link is not null && link.IsOpenAt(now) ? new VisitPass(link.StudentId, link.Id) : null;
    }
}

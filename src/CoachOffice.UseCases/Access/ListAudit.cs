using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Access;

/// <summary>Who did what, newest first.</summary>
public sealed class ListAudit(OfficeDb db)
{
    /// <summary>Rows on a page.</summary>
    public const int PageSize = 50;

    private const int LastPage = 1_000_000;

    /// <summary>A page, from 1; of one thing when a subject is given.</summary>
    public async Task<Outcome<AuditPage>> Now(int page, Guid? subject, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayOwn) return NotAllowed.To("read the audit trail");
        var number = Math.Clamp(page, 1, LastPage);
        var rows = await db.AuditEntries.AsNoTracking().Where(a => subject == null || a.SubjectId == subject)
            .OrderByDescending(a => a.At).ThenByDescending(a => a.Id).Skip((number - 1) * PageSize).Take(PageSize + 1).ToListAsync(stop);
        return new AuditPage([.. rows.Take(PageSize)], number, rows.Count > PageSize);
    }
}

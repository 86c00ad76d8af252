using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Ledger;
using CoachOffice.UseCases.Ledger;
using CoachOffice.UseCases.Students.Groups;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Students.Households;

/// <summary>One payer and those they pay for.</summary>
public sealed class HouseholdPage(OfficeDb db)
{
    /// <summary>The household, or a refusal that there is no such payer.</summary>
    public async Task<Outcome<HouseholdView>> Of(PayerId id, CancellationToken stop = default)
    {
        var payer = await db.Payers.AsNoTracking().SingleOrDefaultAsync(p => p.Id == id && p.ErasedAt == null, stop);
        if (payer is null) return PayerRefusals.NotFound;
        var students = await db.Students.Where(s => s.PayerId == id && s.ErasedAt == null).OrderBy(s => s.SearchText).ThenBy(s => s.Id)
            .Select(s => new { s.Id, s.GivenName, s.FamilyName, s.ArchivedAt }).ToListAsync(stop);
        return new HouseholdView(payer, [.. students.Select(s => new MemberRow(s.Id, $"{s.GivenName} {s.FamilyName}".Trim(), s.ArchivedAt is not null))]);
    }
}

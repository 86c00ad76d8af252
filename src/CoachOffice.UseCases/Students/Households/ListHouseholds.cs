using CoachOffice.Data;
using CoachOffice.Domain.Students;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Students.Households;

/// <summary>Payers who pay for more than one student.</summary>
public sealed class ListHouseholds(OfficeDb db)
{
    /// <summary>By the payer's name.</summary>
    public async Task<IReadOnlyList<HouseholdRow>> Now(CancellationToken stop = default)
    {
        var students = await db.Students.Where(s => s.PayerId != null && s.ErasedAt == null && db.Students.Count(o => o.PayerId == s.PayerId && o.ErasedAt == null) > 1)
            .Join(db.Payers, s => s.PayerId, p => p.Id, (s, p) => new { Payer = p.Id, p.Name, s.GivenName, s.FamilyName, s.SearchText }).ToListAsync(stop);
        return
        [
            .. students.GroupBy(s => (s.Payer, s.Name))
                .Select(g => new HouseholdRow(g.Key.Payer, g.Key.Name, [.. g.OrderBy(s => s.SearchText, StringComparer.Ordinal).Select(s => $"{s.GivenName} {s.FamilyName}".Trim())]))
                .OrderBy(h => StudentSearch.Fold(h.Name), StringComparer.Ordinal).ThenBy(h => h.Id.Value),
        ];
    }
}

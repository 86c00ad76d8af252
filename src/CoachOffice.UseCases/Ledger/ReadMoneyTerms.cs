using CoachOffice.Data;
using CoachOffice.Domain.Ledger;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Ledger;

/// <summary>The practice's terms of money; the usual ones, with version 0, until somebody decides.</summary>
public sealed class ReadMoneyTerms(OfficeDb db)
{
    /// <summary>As they are at this moment.</summary>
    public async Task<MoneyTerms> Now(CancellationToken stop = default) => await db.MoneyTerms.AsNoTracking().SingleOrDefaultAsync(stop) ?? MoneyTerms.Usual(Guid.Empty);
}

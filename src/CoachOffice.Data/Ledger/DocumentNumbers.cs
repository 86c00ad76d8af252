using CoachOffice.Domain;
using CoachOffice.Domain.Ledger;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.Data.Ledger;

/// <summary>Numbers without gaps. The counter's row is raised in the caller's transaction: whoever wants the next number waits for it, and a failure gives the number back.</summary>
public static class DocumentNumbers
{
    /// <summary>The next number of a kind in a year, from 1.</summary>
    public static async Task<int> NextNumber(this OfficeDb db, DocumentKind kind, int year, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(db);
        if (db.Database.CurrentTransaction is null) throw new InvalidOperationException("Begin a transaction before asking for a number.");
        var word = Terms.Of(kind);
        await db.Database.ExecuteSqlAsync($"""INSERT INTO "DocumentCounters" ("Kind", "Year", "Last") VALUES ({word}, {year}, 0) ON CONFLICT ("Kind", "Year") DO NOTHING""", stop);
        await db.DocumentCounters.Where(c => c.Kind == kind && c.Year == year).ExecuteUpdateAsync(c => c.SetProperty(x => x.Last, x => x.Last + 1), stop);
        return await db.DocumentCounters.Where(c => c.Kind == kind && c.Year == year).Select(c => c.Last).SingleAsync(stop);
    }
}

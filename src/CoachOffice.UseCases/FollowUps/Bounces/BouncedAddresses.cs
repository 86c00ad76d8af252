using CoachOffice.Data;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.FollowUps.Bounces;

/// <summary>Addresses from which mail came back for good, as hashes.</summary>
public sealed class BouncedAddresses(OfficeDb db)
{
    /// <summary>All of them as they stand now; a practice has few.</summary>
    public async Task<IReadOnlySet<string>> Now(CancellationToken stop) =>
        (await db.MailBounces.Where(b => b.IsHard).Select(b => b.AddressSha256).Distinct().ToListAsync(stop)).ToHashSet(StringComparer.Ordinal);
}

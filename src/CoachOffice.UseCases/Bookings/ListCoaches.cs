using CoachOffice.Data;
using CoachOffice.Domain.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Bookings;

/// <summary>Who teaches, for lists to choose from.</summary>
public sealed class ListCoaches(OfficeDb db)
{
    /// <summary>Owners and coaches who may sign in, by name.</summary>
    public async Task<IReadOnlyList<CoachName>> Now(CancellationToken stop = default)
    {
        var found = await db.Users.Where(u => u.DisabledAt == null && (u.Policy == Policy.Owner || u.Policy == Policy.Coach)).Select(u => new { u.Id, u.DisplayName }).ToListAsync(stop);
        return [.. found.Select(u => new CoachName(AccountId.From(u.Id), u.DisplayName)).OrderBy(c => c.Name, StringComparer.Ordinal)];
    }
}

using CoachOffice.Data;
using CoachOffice.Domain.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Bookings;

/// <summary>Who teaches, for lists to choose from.</summary>
public sealed class ListCoaches(OfficeDb db)
{
    /// <summary>Owners and coaches by name; those whose account is closed only when asked for.</summary>
    public async Task<IReadOnlyList<CoachName>> Now(bool closedToo = false, CancellationToken stop = default)
    {
        var found = await db.Users.Where(u => (closedToo || u.DisabledAt == null) && (u.Policy == Policy.Owner || u.Policy == Policy.Coach)).Select(u => new { u.Id, u.DisplayName, u.DisabledAt }).ToListAsync(stop);
        return [.. found.Select(u => new CoachName(AccountId.From(u.Id), u.DisplayName) { IsClosed = u.DisabledAt is not null }).OrderBy(c => c.Name, StringComparer.Ordinal)];
    }
}

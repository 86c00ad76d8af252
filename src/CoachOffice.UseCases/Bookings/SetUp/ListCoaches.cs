using CoachOffice.Data;
using CoachOffice.Domain.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Bookings.SetUp;

/// <summary>Who gives lessons.</summary>
public sealed class ListCoaches(OfficeDb db)
{
    /// <summary>Owners and coaches by name; those whose account is closed come only when asked for.</summary>
    public async Task<IReadOnlyList<CoachName>> All(bool closedToo = false, CancellationToken stop = default)
    {
        var found = await db.Users.AsNoTracking().Where(u => (u.Policy == Policy.Owner || u.Policy == Policy.Coach) && (closedToo || u.DisabledAt == null)).Select(u => new { u.Id, u.DisplayName, u.DisabledAt }).ToListAsync(stop);
        return [.. found.OrderBy(u => u.DisplayName, StringComparer.Ordinal).ThenBy(u => u.Id).Select(u => new CoachName(AccountId.From(u.Id), u.DisplayName, u.DisabledAt is not null))];
    }
}

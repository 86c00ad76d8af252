using CoachOffice.Data;
using CoachOffice.Domain.Bookings;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Bookings.SetUp;

/// <summary>What the practice offers.</summary>
public sealed class ReadOfferings(OfficeDb db)
{
    /// <summary>By name, archived ones too.</summary>
    public async Task<IReadOnlyList<Offering>> All(CancellationToken stop = default) => await db.Offerings.AsNoTracking().OrderBy(o => o.Name).ThenBy(o => o.Id).ToListAsync(stop);
}

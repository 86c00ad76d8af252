using CoachOffice.Data;
using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Ledger;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Bookings.SetUp;

/// <summary>An offering with all one can choose from when changing it.</summary>
public sealed class ReadOfferingForm(OfficeDb db, ListCoaches coaches, ReadPlaces places, ReadSetUp setUp, ReadPractice practice)
{
    /// <summary>Of one offering, or for a new one; null when there is no such offering.</summary>
    public async Task<OfferingFormView?> For(OfferingId? id, CancellationToken stop = default)
    {
        var kept = id is { } one ? await db.Offerings.AsNoTracking().SingleOrDefaultAsync(o => o.Id == one, stop) : null;
        if (id is not null && kept is null) return null;
        var currency = Currency.Of((await practice.Now(stop))!.Currency);
        return new OfferingFormView(kept, await coaches.Now(closedToo: true, stop), await places.All(stop), await setUp.Now(stop), currency);
    }
}

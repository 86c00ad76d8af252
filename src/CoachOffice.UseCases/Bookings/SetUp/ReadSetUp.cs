using CoachOffice.Data;
using CoachOffice.Domain.Bookings;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Bookings.SetUp;

/// <summary>What is still missing before lessons can be booked.</summary>
public sealed class ReadSetUp(OfficeDb db, PracticeClock clock)
{
    /// <summary>As it is now.</summary>
    public async Task<SetUpState> Now(CancellationToken stop = default)
    {
        var today = await clock.Today(stop);
        return new SetUpState(
            await db.Places.AnyAsync(p => p.ArchivedAt == null, stop),
            await db.Offerings.AnyAsync(o => o.ArchivedAt == null && o.Kind != OfferingKind.RemoteReview, stop),
            await db.WeeklyHours.AnyAsync(h => h.ValidUntil == null || h.ValidUntil >= today, stop));
    }
}

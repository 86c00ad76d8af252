using CoachOffice.Data;
using CoachOffice.Domain.Bookings;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Bookings;

/// <summary>What the practice has decided about booking, as it stands now.</summary>
internal static class TermsInForce
{
    /// <summary>The terms; the usual ones until somebody saved others (version 0 then).</summary>
    public static async Task<BookingTerms> Terms(this OfficeDb db, CancellationToken stop) =>
        await db.BookingTerms.AsNoTracking().SingleOrDefaultAsync(stop) ?? BookingTerms.Usual(Guid.Empty);
}

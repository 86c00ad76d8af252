using CoachOffice.Data;
using CoachOffice.Domain.Bookings;

namespace CoachOffice.UseCases.Bookings;

/// <summary>What the practice has decided about booking.</summary>
public sealed class ReadBookingTerms(OfficeDb db)
{
    private BookingTerms? _terms;

    /// <summary>The terms; the usual ones until somebody saved others (version 0 then).</summary>
    public async Task<BookingTerms> Now(CancellationToken stop = default) =>
        _terms ??= await db.Terms(stop);
}

using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Ledger;
using NodaTime;

namespace CoachOffice.UseCases.Bookings.Visits;

/// <summary>Whose lessons these are, and at which practice.</summary>
/// <param name="GivenName">The student's.</param>
/// <param name="Practice">Its name.</param>
/// <param name="Zone">Its zone.</param>
/// <param name="Currency">Its money.</param>
/// <param name="Terms">Its terms of booking.</param>
public sealed record VisitorView(string GivenName, string Practice, DateTimeZone Zone, Currency Currency, BookingTerms Terms)
{
    /// <summary>Today at the practice.</summary>
    public required LocalDate Today { get; init; }

    /// <summary>Last day students may book.</summary>
    public LocalDate LastDay => Today.PlusDays(Terms.LatestDays);
}

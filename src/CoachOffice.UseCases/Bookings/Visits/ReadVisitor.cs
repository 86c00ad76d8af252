using CoachOffice.Data;
using CoachOffice.Domain.Ledger;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Bookings.Visits;

/// <summary>What every page of a student's own lessons names.</summary>
public sealed class ReadVisitor(OfficeDb db, ReadPractice practice, ReadBookingTerms terms, PracticeClock clock)
{
    /// <summary>Of the link's student.</summary>
    public async Task<VisitorView> Of(VisitPass pass, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(pass);
        var name = await db.Students.Where(s => s.Id == pass.StudentId).Select(s => s.GivenName).SingleAsync(stop);
        var at = (await practice.Now(stop))!;
        return new VisitorView(name, at.Name, await clock.Zone(stop), Currency.Of(at.Currency), await terms.Now(stop)) { Today = await clock.Today(stop) };
    }
}

using CoachOffice.Data;
using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Ledger;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Media;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Lessons.Reviews;

/// <summary>What a student may send clips for, and what they sent already.</summary>
public sealed class ReviewOffers(OfficeDb db, ReadPractice practice, MediaConsents consents, MediaSettings settings)
{
    /// <summary>For the student behind a link.</summary>
    public async Task<ReviewOffersView> For(VisitPass pass, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(pass);
        var office = await practice.Now(stop);
        var currency = Currency.Of(office!.Currency);
        var student = await db.Students.AsNoTracking().SingleAsync(s => s.Id == pass.StudentId, stop);
        var offerings = await db.Offerings.AsNoTracking().Where(o => o.Kind == OfferingKind.RemoteReview && o.ArchivedAt == null && o.IsBookable).OrderBy(o => o.Name).ThenBy(o => o.Id).ToListAsync(stop);
        return new ReviewOffersView
        {
            Practice = office.Name,
            Offerings = [.. offerings.Select(o => new ReviewOffer(o.Id, o.Name, new Money(o.PriceMinor, currency).ToString(), Promise(o.TurnaroundHours)))],
            Sent = await db.RemoteReviews.AsNoTracking().Where(r => r.StudentId == pass.StudentId).OrderByDescending(r => r.SubmittedAt).ThenBy(r => r.Id).Take(20).ToListAsync(stop),
            Permission = await consents.For(student, stop),
            Largest = MediaSize.Said(settings.LargestClip),
        };
    }

    private static string Promise(int hours) => hours % 24 == 0 && hours > 24 ? $"{hours / 24} days" : hours == 1 ? "an hour" : $"{hours} hours";
}

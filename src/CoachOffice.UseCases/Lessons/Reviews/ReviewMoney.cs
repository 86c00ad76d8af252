using CoachOffice.Data;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Ledger;
using CoachOffice.Domain.Lessons.Reviews;
using CoachOffice.UseCases.Ledger;
using Microsoft.EntityFrameworkCore;
using NodaTime.Text;

namespace CoachOffice.UseCases.Lessons.Reviews;

/// <summary>What an answered remote review means for money: the price that was told when it came in is charged, in the caller's transaction.</summary>
public sealed class ReviewMoney(OfficeDb db, LedgerBook book, OwnPayer own)
{
    /// <summary>Adds the charge; saves nothing.</summary>
    public async Task Answered(RemoteReview review, Actor actor, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(review);
        if (review.PriceMinor == 0) return;
        var student = await db.Students.SingleAsync(s => s.Id == review.StudentId, stop);
        var offering = await db.Offerings.AsNoTracking().SingleAsync(o => o.Id == review.OfferingId, stop);
        var text = $"{offering.Name}, sent {LocalDatePattern.Iso.Format(review.SubmittedAt.InUtc().Date)}";
        var facts = await book.Facts(await own.Of(student, stop), actor, stop: stop) with { StudentId = review.StudentId, OfferingId = review.OfferingId, CoachId = review.CoachId, Text = text };
        var line = new TaxLine(text, new Money(review.PriceMinor, await book.Currency(stop)), new TaxRate(review.TaxBasisPoints));
        book.Add(EntryKind.Charge, facts, Movements.Charge([(await book.Terms(stop)).TaxRule.Of(line)]));
    }
}

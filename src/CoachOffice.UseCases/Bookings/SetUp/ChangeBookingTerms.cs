using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Bookings.SetUp;

/// <summary>Saves what the practice decides about booking and cancelling. They hold for what is cancelled from now on, whenever it was booked.</summary>
public sealed class ChangeBookingTerms(OfficeDb db, AuditTrail trail, Clash clash)
{
    /// <summary>The new version, or why not. Version 0 stands for the usual terms, before anything was saved.</summary>
    public async Task<Outcome<int>> To(int version, BookingTermsDetails details, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(details);
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayOwn) return NotAllowed.To("change the terms of booking");
        var wrong = details.Check();
        if (wrong.Count > 0) return Outcome<int>.Refused(wrong);
        var terms = await db.BookingTerms.SingleOrDefaultAsync(stop);
        if ((terms?.Version ?? 0) != version) return await Clashed(terms!, details, stop);
        if (terms is null) db.BookingTerms.Add(terms = BookingTerms.Usual(BookingTerms.Only));
        terms.Change(details);
        trail.Add(actor, "booking-terms-changed", AuditSubject.Terms(terms.Id));
        if (await db.TrySave(stop) == Saved.Yes) return terms.Version;
        db.ChangeTracker.Clear();
        return await Clashed(await db.BookingTerms.SingleAsync(stop), details, stop);
    }

    private async Task<Outcome<int>> Clashed(BookingTerms kept, BookingTermsDetails yours, CancellationToken stop)
    {
        Difference[] all =
        [
            new(nameof(yours.NoticeHours), "Hours of notice", $"{kept.NoticeHours}", $"{yours.NoticeHours}"),
            new(nameof(yours.LateFeePercent), "Owed when cancelled late", $"{kept.LateFeePercent} %", $"{yours.LateFeePercent} %"),
            new(nameof(yours.NoShowFeePercent), "Owed when nobody came", $"{kept.NoShowFeePercent} %", $"{yours.NoShowFeePercent} %"),
            new(nameof(yours.LateTakesCredit), "A credit is used up", kept.LateTakesCredit ? "yes" : "no", yours.LateTakesCredit ? "yes" : "no"),
            new(nameof(yours.HoldMinutes), "Minutes a time is kept", $"{kept.HoldMinutes}", $"{yours.HoldMinutes}"),
            new(nameof(yours.OfferMinutes), "Minutes a freed place is kept", $"{kept.OfferMinutes}", $"{yours.OfferMinutes}"),
            new(nameof(yours.EarliestHours), "Hours ahead at least", $"{kept.EarliestHours}", $"{yours.EarliestHours}"),
            new(nameof(yours.LatestDays), "Days ahead at most", $"{kept.LatestDays}", $"{yours.LatestDays}"),
            new(nameof(yours.StepMinutes), "Times begin every so many minutes", $"{kept.StepMinutes}", $"{yours.StepMinutes}"),
        ];
        return Outcome<int>.Refused(await clash.Over(AuditSubject.Terms(kept.Id), "the terms", all, stop));
    }
}

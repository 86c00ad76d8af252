using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Bookings.SetUp;

/// <summary>Keeps something students can book. What is booked keeps its price and its length.</summary>
public sealed class KeepOffering(OfficeDb db, PracticeClock clock, Clash clash, AuditTrail trail, INewIds ids)
{
    /// <summary>The offering, or everything that is wrong with it.</summary>
    public async Task<Outcome<OfferingId>> As(OfferingForm form, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(form);
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayOwn) return NotAllowed.To("change what is offered");
        var wrong = await OfferingCheck.Of(db, form.Details, form.Id, stop);
        if (wrong.Count > 0) return Outcome<OfferingId>.Refused(wrong);
        var offering = form.Id is { } id ? await db.Offerings.SingleOrDefaultAsync(o => o.Id == id, stop) : Offering.Of(OfferingId.From(ids.Next()), form.Details, clock.Now);
        if (offering is null) return SetUpRefusals.NoOffering;
        if (form.Id is null) db.Offerings.Add(offering);
        else if (offering.Version != form.Version) return await Clashed(offering, form.Details, stop);
        offering.Change(form.Details);
        trail.Add(actor, "offering-kept", AuditSubject.Of(offering.Id));
        if (await db.TrySave(stop) == Saved.Yes) return offering.Id;
        db.ChangeTracker.Clear();
        return await Clashed(await db.Offerings.SingleAsync(o => o.Id == offering.Id, stop), form.Details, stop);
    }

    private async Task<Outcome<OfferingId>> Clashed(Offering kept, OfferingDetails yours, CancellationToken stop) =>
        Outcome<OfferingId>.Refused(await clash.Over(AuditSubject.Of(kept.Id), "this offering", OfferingFields.Compare(kept, yours), stop));
}

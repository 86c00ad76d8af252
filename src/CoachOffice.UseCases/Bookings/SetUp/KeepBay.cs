using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Bookings.SetUp;

/// <summary>Keeps a bay or room of a place.</summary>
public sealed class KeepBay(OfficeDb db, AuditTrail trail, Clash clash, INewIds ids)
{
    /// <summary>The bay, or what is wrong with it.</summary>
    public async Task<Outcome<ResourceId>> As(BayForm form, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(form);
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayOwn) return NotAllowed.To("change bays");
        if (!await db.Places.AnyAsync(p => p.Id == form.PlaceId, stop)) return SetUpRefusals.NoPlace;
        var here = await db.Resources.Where(r => r.PlaceId == form.PlaceId).ToListAsync(stop);
        if (SetUpRefusals.Name(form.Name, "bay", here.Where(r => r.Id != form.Id).Select(r => r.Name)) is { } wrong) return wrong;
        var bay = form.Id is { } id ? here.Find(r => r.Id == id) : Resource.At(ResourceId.From(ids.Next()), form.PlaceId);
        if (bay is null) return SetUpRefusals.NoBay;
        if (form.Id is null) db.Resources.Add(bay);
        else if (bay.Version != form.Version) return await Clashed(bay, form, stop);
        bay.Write(form.Name);
        trail.Add(actor, "bay-kept", AuditSubject.Of(bay.Id));
        if (await db.TrySave(stop) == Saved.Yes) return bay.Id;
        db.ChangeTracker.Clear();
        return await Clashed(await db.Resources.SingleAsync(r => r.Id == bay.Id, stop), form, stop);
    }

    private async Task<Outcome<ResourceId>> Clashed(Resource kept, BayForm yours, CancellationToken stop) =>
        Outcome<ResourceId>.Refused(await clash.Over(AuditSubject.Of(kept.Id), "this bay", [new(nameof(yours.Name), "Name", kept.Name, yours.Name.Trim())], stop));
}

using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Bookings.SetUp;

/// <summary>Keeps a place where lessons are given.</summary>
public sealed class KeepPlace(OfficeDb db, AuditTrail trail, Clash clash, INewIds ids)
{
    /// <summary>The place, or what is wrong with it.</summary>
    public async Task<Outcome<PlaceId>> As(PlaceForm form, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(form);
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayOwn) return NotAllowed.To("change places");
        var all = await db.Places.ToListAsync(stop);
        if (SetUpRefusals.Name(form.Name, "place", all.Where(p => p.Id != form.Id).Select(p => p.Name)) is { } wrong) return wrong;
        if (form.Address.Trim().Length > 400) return new Refusal("place-address", "Write an address of at most 400 characters.", nameof(form.Address));
        var place = form.Id is { } id ? all.Find(p => p.Id == id) : Place.Of(PlaceId.From(ids.Next()));
        if (place is null) return SetUpRefusals.NoPlace;
        if (form.Id is null) db.Places.Add(place);
        else if (place.Version != form.Version) return await Clashed(place, form, stop);
        place.Write(form.Name, form.Address);
        trail.Add(actor, "place-kept", AuditSubject.Of(place.Id));
        if (await db.TrySave(stop) == Saved.Yes) return place.Id;
        db.ChangeTracker.Clear();
        return await Clashed(await db.Places.SingleAsync(p => p.Id == place.Id, stop), form, stop);
    }

    private async Task<Outcome<PlaceId>> Clashed(Place kept, PlaceForm yours, CancellationToken stop) =>
        Outcome<PlaceId>.Refused(await clash.Over(AuditSubject.Of(kept.Id), "this place", [new(nameof(yours.Name), "Name", kept.Name, yours.Name.Trim()), new(nameof(yours.Address), "Address", kept.Address, yours.Address.Trim())], stop));
}

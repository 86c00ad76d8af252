using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Bookings;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Bookings;

/// <summary>Looks up what a booking form names, and says what of it cannot be.</summary>
public sealed class BookingFacts(OfficeDb db)
{
    /// <summary>The offering and the bays to choose from, or everything that is wrong.</summary>
    public async Task<Outcome<AskedFor>> Of(BookingForm form, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(form);
        var offering = await db.Offerings.AsNoTracking().SingleOrDefaultAsync(o => o.Id == form.OfferingId, stop);
        if (offering is null || offering.ArchivedAt is not null || offering.Kind == OfferingKind.RemoteReview) return BookingRefusals.NoOffering;
        List<Refusal> wrong = [.. Time(form), .. Room(form, offering), .. await Students(form, stop)];
        if (!await db.Users.AnyAsync(u => u.Id == form.CoachId.Value && u.DisabledAt == null && (u.Policy == Domain.Access.Policy.Owner || u.Policy == Domain.Access.Policy.Coach), stop))
            wrong.Add(new("coach-unknown", "Pick a coach from the list.", nameof(form.CoachId)));
        var bays = await db.Resources.Where(r => r.PlaceId == form.PlaceId && r.ArchivedAt == null).OrderBy(r => r.Name).ThenBy(r => r.Id).Select(r => r.Id).ToListAsync(stop);
        if (!await db.Places.AnyAsync(p => p.Id == form.PlaceId && p.ArchivedAt == null, stop)) wrong.Add(new("place-unknown", "Pick a place from the list.", nameof(form.PlaceId)));
        if (form.ResourceId is { } bay && !bays.Contains(bay)) wrong.Add(new("bay-unknown", "That bay or room is not at this place.", nameof(form.ResourceId)));
        if (wrong.Count > 0) return Outcome<AskedFor>.Refused(wrong);
        var fitting = bays.Where(offering.Resources.Contains).ToList();
        return offering.Resources.Count > 0 && form.ResourceId is null && fitting.Count == 0
            ? new Refusal("no-bay", "This needs a bay or a room, and there is none for it at that place. Add one in the settings, or pick another place.", nameof(form.PlaceId))
            : new AskedFor(offering, fitting);
    }

    /// <summary>Bays a booking that is moved may take: its own first; none to choose where one is named or none is needed.</summary>
    internal async Task<IReadOnlyList<ResourceId>> BaysOf(Booking booking, BookingForm wanted, CancellationToken stop)
    {
        if (wanted.ResourceId is not null) return [];
        var allowed = await db.Offerings.Where(o => o.Id == booking.OfferingId).Select(o => o.Resources).SingleAsync(stop);
        var here = await db.Resources.Where(r => r.PlaceId == wanted.PlaceId && r.ArchivedAt == null).OrderBy(r => r.Name).ThenBy(r => r.Id).Select(r => r.Id).ToListAsync(stop);
        return [.. here.Where(allowed.Contains).OrderByDescending(r => r == booking.ResourceId)];
    }

    private static IEnumerable<Refusal> Time(BookingForm form)
    {
        if (form.Minutes is { } minutes && minutes is < 5 or > OfferingDetails.LongestMinutes) yield return new("booking-minutes", "A lesson takes from 5 minutes to 12 hours.", nameof(form.Minutes));
        if (form.Start.Year is < 2000 or > 2100) yield return new("booking-start", "Write the day of the lesson.", nameof(form.Start));
        if (form.Note.Length > 2000) yield return new("booking-note", "Write a note of at most 2,000 characters.", nameof(form.Note));
    }

    private static IEnumerable<Refusal> Room(BookingForm form, Offering offering)
    {
        if (form.Students.Count == 0 && offering.Kind is not OfferingKind.Group) yield return new("booking-students", "Pick the student.", nameof(form.Students));
        if (form.Students.Count > offering.Capacity) yield return new("booking-full", $"{offering.Name} has room for {offering.Capacity}.", nameof(form.Students));
        if (form.Students.Distinct().Count() < form.Students.Count) yield return new("booking-twice", "One student is named twice.", nameof(form.Students));
    }

    private async Task<IEnumerable<Refusal>> Students(BookingForm form, CancellationToken stop)
    {
        var named = form.Students.ToList();
        var known = await db.Students.Where(s => named.Contains(s.Id) && s.ErasedAt == null).Select(s => new { s.Id, s.ArchivedAt, Name = s.GivenName + " " + s.FamilyName }).ToListAsync(stop);
        if (known.Count < named.Distinct().Count()) return [new("student-unknown", "Pick the student from the list.", nameof(form.Students))];
        return known.Where(s => s.ArchivedAt is not null).Select(s => new Refusal("student-archived", $"{s.Name.Trim()} is archived; restore the record first.", nameof(form.Students)));
    }
}

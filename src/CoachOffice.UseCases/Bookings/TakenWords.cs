using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Students;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Bookings;

/// <summary>Says whose time is taken and when, naming nobody who is not part of what is asked for.</summary>
internal static class TakenWords
{
    public static async Task<Refusal> Of(OfficeDb db, Booking booking, TakenTime against, CancellationToken stop)
    {
        var zone = DateTimeZoneProviders.Tzdb[booking.Zone];
        var (from, until) = (against.From.InZone(zone), against.Until.InZone(zone));
        var field = booking.CoachId.Value == against.Holder ? nameof(BookingForm.CoachId) : booking.ResourceId?.Value == against.Holder ? nameof(BookingForm.ResourceId) : nameof(BookingForm.Students);
        return new Refusal(BookingRefusals.TakenCode, $"{await NameOf(db, against.Holder, field, stop)} is booked from {from:HH:mm} to {until:HH:mm} then. Pick another time.", field);
    }

    private static async Task<string> NameOf(OfficeDb db, Guid holder, string field, CancellationToken stop)
    {
        var name = field switch
        {
            nameof(BookingForm.CoachId) => await db.Users.Where(u => u.Id == holder).Select(u => u.DisplayName).SingleOrDefaultAsync(stop),
            nameof(BookingForm.ResourceId) => await Bay(db, ResourceId.From(holder), stop),
            _ => await Student(db, StudentId.From(holder), stop),
        };
        return string.IsNullOrEmpty(name) ? "This" : name;
    }

    private static Task<string?> Bay(OfficeDb db, ResourceId bay, CancellationToken stop) => db.Resources.Where(r => r.Id == bay).Select(r => r.Name).SingleOrDefaultAsync(stop);

    private static Task<string?> Student(OfficeDb db, StudentId student, CancellationToken stop) =>
        db.Students.Where(s => s.Id == student).Select(s => s.GivenName + " " + s.FamilyName).SingleOrDefaultAsync(stop);
}

using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Bookings.Visits;
using NodaTime.Text;

namespace CoachOffice.Web.Features.Bookings.Private;

/// <summary>A free time as a button or an address carries it: coach, place and local start.</summary>
internal static class PickedTime
{
    private static readonly LocalDateTimePattern Start = LocalDateTimePattern.CreateWithInvariantCulture("uuuu-MM-dd'T'HH:mm");

    public static string Text(FreeTime time)
    {
        ArgumentNullException.ThrowIfNull(time);
        return $"{time.Coach.Value:N}.{time.Place.Value:N}.{Start.Format(time.LocalStart)}";
    }

    /// <summary>Null when it is none of ours.</summary>
    public static HoldForm? Read(string? text, BookingId id, OfferingId offering)
    {
        var parts = (text ?? "").Split('.');
        if (parts.Length != 3 || !Guid.TryParseExact(parts[0], "N", out var coach) || !Guid.TryParseExact(parts[1], "N", out var place)) return null;
        var start = Start.Parse(parts[2]);
        return start.Success ? new HoldForm { Id = id, OfferingId = offering, CoachId = AccountId.From(coach), PlaceId = PlaceId.From(place), Start = start.Value } : null;
    }
}

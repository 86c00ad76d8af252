using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Bookings;
using CoachOffice.Web.Shell.Wording;
using NodaTime;
using NodaTime.Text;

namespace CoachOffice.Web.Features.Bookings;

/// <summary>Day, time, coach, place and bay of a booking as typed.</summary>
public sealed class WhereInput
{
    private static readonly LocalTimePattern Clock = LocalTimePattern.CreateWithInvariantCulture("HH:mm");

    public string? Day { get; set; }

    public string? At { get; set; }

    public string? Minutes { get; set; }

    public Guid? CoachId { get; set; }

    public Guid? PlaceId { get; set; }

    public Guid? ResourceId { get; set; }

    internal static WhereInput Of(BookingView view)
    {
        var start = view.Booking.Starts.InZone(view.Zone).LocalDateTime;
        return new WhereInput
        {
            Day = DayEntry.Text(start.Date),
            At = Clock.Format(start.TimeOfDay),
            Minutes = view.Minutes.ToString(System.Globalization.CultureInfo.InvariantCulture),
            CoachId = view.Booking.CoachId.Value,
            PlaceId = view.PlaceId.Value,
            ResourceId = view.ResourceId?.Value,
        };
    }

    /// <summary>What a free time's button says: start, coach, place.</summary>
    internal static string Text(FreeTime free) => $"{DayEntry.Text(free.LocalStart.Date)} {Clock.Format(free.LocalStart.TimeOfDay)} {free.Coach.Value} {free.Place.Value}";

    /// <summary>Takes such a time over; what cannot be read changes nothing.</summary>
    internal void Take(string? time)
    {
        if (time?.Split(' ') is not [var day, var at, var coach, var place] || !Guid.TryParse(coach, out var who) || !Guid.TryParse(place, out var where)) return;
        (Day, At, CoachId, PlaceId, ResourceId) = (day, at, who, where, null);
    }

    /// <summary>Wall clock and length, or what is wrong with them.</summary>
    internal Outcome<(LocalDateTime Start, int? Minutes)> Time()
    {
        List<Refusal> wrong = [];
        var day = DayEntry.Read(Day);
        if (day is null) wrong.Add(DayEntry.Refusal(nameof(Day)));
        var at = Clock.Parse(At?.Trim() ?? "");
        if (!at.Success) wrong.Add(new("time-not-known", "Write the time like 09:30.", nameof(At)));
        int? minutes = null;
        if (!string.IsNullOrWhiteSpace(Minutes))
        {
            if (int.TryParse(Minutes, System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out var read)) minutes = read;
            else wrong.Add(new("booking-minutes", "Write the length in whole minutes, such as 45.", nameof(Minutes)));
        }

        return wrong.Count > 0 ? Outcome<(LocalDateTime, int?)>.Refused(wrong) : (day!.Value.At(at.Value), minutes);
    }

    internal Outcome<MoveForm> Read()
    {
        var time = Time();
        return time.TryGet(out var when)
            ? new MoveForm
            {
                Start = when.Start,
                Minutes = when.Minutes,
                CoachId = CoachId is { } coach && coach != Guid.Empty ? AccountId.From(coach) : null,
                PlaceId = PlaceId is { } place && place != Guid.Empty ? Domain.Bookings.PlaceId.From(place) : null,
                ResourceId = ResourceId is { } bay && bay != Guid.Empty ? Domain.Bookings.ResourceId.From(bay) : null,
            }
            : Outcome<MoveForm>.Refused(time.Refusals);
    }
}

using NodaTime;

namespace CoachOffice.Domain.Bookings;

/// <summary>From and until of one weekday, half-open; an end at midnight is the end of the day.</summary>
public sealed record DayHours(IsoDayOfWeek Day, LocalTime From, LocalTime Until);

using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using NodaTime;
using NodaTime.Text;

namespace CoachOffice.Domain.Tests.Bookings;

/// <summary>Short ways to write hours, days and times down in tests.</summary>
internal static class Hours
{
    public static readonly AccountId Coach = AccountId.From(FixedIds.Of(1));
    public static readonly PlaceId Range = PlaceId.From(FixedIds.Of(11));
    public static readonly PlaceId Course = PlaceId.From(FixedIds.Of(12));
    public static readonly DateTimeZone London = DateTimeZoneProviders.Tzdb["Europe/London"];
    private static readonly FixedIds Ids = new();

    public static LocalTime Time(string text) => LocalTimePattern.CreateWithInvariantCulture("HH:mm").Parse(text).Value;

    public static LocalDate Day(string text) => LocalDatePattern.Iso.Parse(text).Value;

    public static LocalDateTime Local(string text) => LocalDateTimePattern.CreateWithInvariantCulture("uuuu-MM-dd HH:mm").Parse(text).Value;

    public static DateInterval Days(string first, string last) => new(Day(first), Day(last));

    public static WeeklyHours Weekly(IsoDayOfWeek day, string from, string until, PlaceId? place = null, string validFrom = "2026-01-01", string? validUntil = null) =>
        WeeklyHours.Of(Ids.Next(), Coach, place ?? Range, new DayHours(day, Time(from), Time(until)), Day(validFrom), validUntil is null ? null : Day(validUntil));

    public static HoursException Closed(string from, string until, bool practice = false) =>
        HoursException.Closed(Ids.Next(), practice ? null : Coach, new LocalSpan(Local(from), Local(until), London), "");

    public static HoursException Opened(string from, string until, PlaceId? place = null) =>
        HoursException.Open(Ids.Next(), Coach, place ?? Range, new LocalSpan(Local(from), Local(until), London), "");

    /// <summary>Open times as a person would write them: local, with the place's initial.</summary>
    public static IReadOnlyList<string> Read(HoursBook book, DateInterval days, DateTimeZone zone) =>
        [.. OpenTimes.Of(Coach, book, days, zone).Select(o => $"{(o.Place == Range ? "range" : "course")} {Written(o.Time.Start, zone)} to {Written(o.Time.End, zone)}")];

    private static string Written(Instant at, DateTimeZone zone) => at.InZone(zone).ToString("ddd HH:mm x", null);
}

using System.Globalization;
using CoachOffice.Domain.Bookings;
using NodaTime;

namespace CoachOffice.UseCases.Insight;

/// <summary>Lines of the morning list. Pure.</summary>
internal static class MorningWords
{
    public static string Lesson(DiaryRow row, DateTimeZone zone)
    {
        var who = row.Seats.Select(s => $"{s.Name.Trim()}{(s.Status == SeatStatus.Booked && s.ComingAt is not null ? " (is coming)" : "")}");
        return $"{Time(row.Starts, zone)} to {Time(row.Ends, zone)}, {row.Offering}: {(row.Seats.Count == 0 ? "nobody yet" : string.Join(", ", who))}";
    }

    public static string Moment(Instant at, DateTimeZone zone) => at.InZone(zone).ToString("dddd d MMMM, HH:mm", CultureInfo.InvariantCulture);

    public static IEnumerable<string> Counted(int count, string one, string more) => count switch { 0 => [], 1 => [$"one {one}"], _ => [$"{count} {more}"] };

    private static string Time(Instant at, DateTimeZone zone) => at.InZone(zone).TimeOfDay.ToString("HH:mm", CultureInfo.InvariantCulture);
}

using Microsoft.Extensions.Caching.Memory;

namespace CoachOffice.UseCases.Bookings;

/// <summary>Days of the calendar read lately, by their stamp: a calendar is looked at far more often than it changes.</summary>
/// <remarks>The names in it are kept for a minute at most.</remarks>
public sealed class KeptCalendars : IDisposable
{
    private const int Most = 60;
    private static readonly MemoryCacheEntryOptions Entry = new() { Size = 1, AbsoluteExpirationRelativeToNow = TimeSpan.FromMinutes(1) };

    private readonly MemoryCache _read = new(new MemoryCacheOptions { SizeLimit = Most });

    /// <inheritdoc/>
    public void Dispose() => _read.Dispose();

    internal CalendarView? Find(CalendarStamp stamp) => _read.Get<CalendarView>(stamp);

    internal CalendarView Keep(CalendarStamp stamp, CalendarView read) => _read.Set(stamp, read, Entry);
}

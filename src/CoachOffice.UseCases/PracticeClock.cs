using CoachOffice.UseCases.Access;
using NodaTime;

namespace CoachOffice.UseCases;

/// <summary>The practice's day: now, in its own zone.</summary>
public sealed class PracticeClock(ReadPractice practice, IClock clock)
{
    private DateTimeZone? _zone;

    /// <summary>Now, to the millisecond.</summary>
    public Instant Now => clock.GetCurrentInstant();

    /// <summary>The practice's zone; UTC before there is a practice.</summary>
    public async Task<DateTimeZone> Zone(CancellationToken stop = default)
    {
        if (_zone is not null) return _zone;
        var id = (await practice.Now(stop))?.Zone;
        return _zone = id is null ? DateTimeZone.Utc : DateTimeZoneProviders.Tzdb.GetZoneOrNull(id) ?? DateTimeZone.Utc;
    }

    /// <summary>Today in the practice's zone.</summary>
    public async Task<LocalDate> Today(CancellationToken stop = default) => Now.InZone(await Zone(stop)).Date;
}

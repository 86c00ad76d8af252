using NodaTime;

namespace CoachOffice.SeedDemo.Year;

/// <summary>The year before the opening day, counted back from it.</summary>
/// <param name="Zone">The practice's.</param>
/// <param name="Now">The moment of opening; nothing happens after it.</param>
internal sealed record DemoCalendar(DateTimeZone Zone, Instant Now)
{
    private const int DaysBack = 371;

    /// <summary>The opening day.</summary>
    public LocalDate Today => Now.InZone(Zone).Date;

    /// <summary>Every day, oldest first.</summary>
    public IEnumerable<LocalDate> Days => Enumerable.Range(0, DaysBack + 1).Select(i => Today.PlusDays(i - DaysBack));

    /// <summary>How many days lie before the opening.</summary>
    public int Before(LocalDate day) => Period.Between(day, Today, PeriodUnits.Days).Days;

    /// <summary>A time of a day, or the moment of opening when that is earlier.</summary>
    public Instant At(LocalDate day, LocalTime time) => Instant.Min(Zone.AtLeniently(day + time).ToInstant(), Now);
}

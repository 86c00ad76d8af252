using Microsoft.EntityFrameworkCore.Storage.ValueConversion;
using NodaTime;

namespace CoachOffice.Data.Columns;

/// <summary>An instant is stored as UTC date and time cut to milliseconds, which both databases keep and compare exactly.</summary>
internal sealed class Instants() : ValueConverter<Instant, DateTime>(
    instant => ToColumn(instant),
    stored => Instant.FromDateTimeUtc(DateTime.SpecifyKind(stored, DateTimeKind.Utc)))
{
    /// <summary>The stored form, also for parameters of SQL written by hand.</summary>
    public static DateTime ToColumn(Instant instant) => Instant.FromUnixTimeMilliseconds(instant.ToUnixTimeMilliseconds()).ToDateTimeUtc();
}

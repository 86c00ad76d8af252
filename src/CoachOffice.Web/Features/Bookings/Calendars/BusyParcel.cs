using System.Globalization;
using System.Security.Cryptography;
using CoachOffice.Domain.Access;
using Microsoft.AspNetCore.DataProtection;
using NodaTime;

namespace CoachOffice.Web.Features.Bookings.Calendars;

/// <summary>Busy times on their way from the preview to the confirmation, sealed into the form itself: no file of somebody's calendar ever lies here.</summary>
internal sealed class BusyParcel(IDataProtectionProvider protection, Actor actor)
{
    private static readonly TimeSpan Life = TimeSpan.FromHours(1);
    private readonly ITimeLimitedDataProtector _seal = protection.CreateProtector("CoachOffice.BusyTimes", actor.Account?.Value.ToString("N") ?? "nobody").ToTimeLimitedDataProtector();

    public string Pack(IReadOnlyList<Interval> times) =>
        _seal.Protect(string.Join(' ', times.Select(t => string.Create(CultureInfo.InvariantCulture, $"{t.Start.ToUnixTimeSeconds()} {t.End.ToUnixTimeSeconds()}"))), Life);

    /// <summary>The times, or null when the parcel is too old, somebody else's or no parcel.</summary>
    public IReadOnlyList<Interval>? Open(string? parcel)
    {
        if (string.IsNullOrEmpty(parcel)) return null;
        try
        {
            var moments = _seal.Unprotect(parcel).Split(' ').Select(t => Instant.FromUnixTimeSeconds(long.Parse(t, CultureInfo.InvariantCulture))).ToList();
            return [.. moments.Chunk(2).Select(pair => new Interval(pair[0], pair[1]))];
        }
        catch (CryptographicException)
        {
            return null;
        }
    }
}

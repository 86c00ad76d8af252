using NodaTime;

namespace CoachOffice.Web.Shell;

/// <summary>What long lists offer while typing.</summary>
internal static class PickLists
{
    /// <summary>IANA zones people live in, by name.</summary>
    public static IReadOnlyList<string> Zones { get; } =
    [
        .. DateTimeZoneProviders.Tzdb.Ids
            .Where(id => id.Contains('/', StringComparison.Ordinal) && !id.StartsWith("Etc/", StringComparison.Ordinal) && !id.StartsWith("System", StringComparison.Ordinal))
            .Order(StringComparer.Ordinal),
        "UTC",
    ];

    /// <summary>ISO 4217 codes in daily use (from memory; all of the list are taken).</summary>
    public static IReadOnlyList<string> Currencies { get; } =
    [
        "AED", "ARS", "AUD", "BBD", "BGN", "BHD", "BMD", "BRL", "BSD", "CAD", "CHF", "CLP", "CNY", "COP", "CRC", "CZK", "DKK", "DOP", "EGP", "EUR",
        "FJD", "GBP", "GHS", "HKD", "HUF", "IDR", "ILS", "INR", "ISK", "JMD", "JOD", "JPY", "KES", "KRW", "KWD", "KZT", "LKR", "MAD", "MUR", "MXN",
        "MYR", "NAD", "NGN", "NOK", "NZD", "OMR", "PEN", "PHP", "PKR", "PLN", "QAR", "RON", "RSD", "SAR", "SEK", "SGD", "THB", "TND", "TRY", "TTD",
        "TWD", "TZS", "UAH", "UGX", "USD", "UYU", "VND", "ZAR", "ZMW",
    ];
}

using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.Domain.Access;

/// <summary>What a person enters about the practice.</summary>
public sealed record PracticeDetails
{
    public required string Name { get; init; }

    public required string Zone { get; init; }

    public required string Currency { get; init; }

    public UnitSystem Units { get; init; }

    public string EmergencyNumber { get; init; } = "112";

    public bool RequiresSecondFactor { get; init; }

    public string MailFrom { get; init; } = "";

    public string PublicAddress { get; init; } = "http://localhost:5180";

    /// <summary>Everything that is wrong, each with the field and what would be right.</summary>
    public IReadOnlyList<Refusal> Check() => [.. Words(), .. Addresses()];

    private IEnumerable<Refusal> Words()
    {
        if (!OneLine.Shows(Name) || Name.Length > 120) yield return new("practice-name", "Give the practice a name of up to 120 characters.", nameof(Name));
        else if (!OneLine.Fits(Name)) yield return new("practice-name-line", OneLine.Wanted, nameof(Name));
        if (DateTimeZoneProviders.Tzdb.GetZoneOrNull(Zone) is null) yield return new("practice-zone", $"'{Zone}' is no time zone; pick one such as Europe/London.", nameof(Zone));
        if (Ledger.Currency.Find(Currency) is null) yield return new("practice-currency", "Write the currency as its three capital letters in ISO 4217, such as EUR.", nameof(Currency));
        // Students are told to call it, so it must be something a phone can dial.
        if (EmergencyNumber.Length is < 2 or > 20 || !EmergencyNumber.All(c => char.IsAsciiDigit(c) || c is ' ' or '+' or '-' or '/'))
            yield return new("practice-emergency", "Write the emergency number in digits, such as 112.", nameof(EmergencyNumber));
    }

    private IEnumerable<Refusal> Addresses()
    {
        if (MailFrom.Length > 0 && !MailAddress.LooksRight(MailFrom)) yield return new("practice-mail-from", $"'{MailFrom}' is no mail address; write it like office@example.org.", nameof(MailFrom));
        if (!IsPlain(PublicAddress)) yield return new("practice-address", "Write the address of these pages as http:// or https:// and the name of the machine, such as https://lessons.example.org.", nameof(PublicAddress));
    }

    // Links are made by writing a path behind it, so nothing may stand there already.
    private static bool IsPlain(string address) =>
        Uri.TryCreate(address, UriKind.Absolute, out var uri) && uri.Scheme is "http" or "https"
        && uri is { UserInfo: "", PathAndQuery: "/", Fragment: "" } && !address.Contains('?', StringComparison.Ordinal) && !address.Contains('#', StringComparison.Ordinal);
}

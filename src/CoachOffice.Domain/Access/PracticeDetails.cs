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
    public IReadOnlyList<Refusal> Check()
    {
        var refusals = new List<Refusal>();
        if (string.IsNullOrWhiteSpace(Name) || Name.Length > 120) refusals.Add(new("practice-name", "Give the practice a name of up to 120 characters.", nameof(Name)));
        if (DateTimeZoneProviders.Tzdb.GetZoneOrNull(Zone) is null) refusals.Add(new("practice-zone", $"'{Zone}' is no time zone; pick one such as Europe/London.", nameof(Zone)));
        if (Currency.Length != 3 || !Currency.All(char.IsAsciiLetterUpper)) refusals.Add(new("practice-currency", "Write the currency as three capital letters, such as EUR.", nameof(Currency)));
        if (!Uri.TryCreate(PublicAddress, UriKind.Absolute, out var address) || address.Scheme is not ("http" or "https"))
            refusals.Add(new("practice-address", "Write the address of these pages as http:// or https://.", nameof(PublicAddress)));
        return refusals;
    }
}

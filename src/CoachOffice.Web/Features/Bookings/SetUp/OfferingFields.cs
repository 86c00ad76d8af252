using System.Globalization;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Ledger;
using CoachOffice.UseCases.Bookings.SetUp;

namespace CoachOffice.Web.Features.Bookings.SetUp;

/// <summary>An offering as typed.</summary>
public sealed class OfferingFields
{
    public int Version { get; set; }

    public string? Name { get; set; }

    public string? Kind { get; set; } = Terms.Of(OfferingKind.Private);

    /// <summary>Such as 45,00 or 45.00.</summary>
    public string? PriceMinor { get; set; }

    /// <summary>In percent, such as 20 or 17.5.</summary>
    public string? TaxBasisPoints { get; set; } = "0";

    public string? Minutes { get; set; } = "60";

    public string? BufferMinutes { get; set; } = "0";

    public string? Capacity { get; set; } = "1";

    public string? TurnaroundHours { get; set; } = "48";

    public List<Guid> Places { get; set; } = [];

    public List<Guid> Coaches { get; set; } = [];

    public List<Guid> Resources { get; set; } = [];

    public bool IsBookable { get; set; } = true;

    internal static OfferingFields Of(Offering offering, Currency currency) => new()
    {
        Version = offering.Version,
        Name = offering.Name,
        Kind = Terms.Of(offering.Kind),
        PriceMinor = new Money(offering.PriceMinor, currency).Amount,
        TaxBasisPoints = Percent(offering.TaxBasisPoints),
        Minutes = TermsFields.Text(offering.Minutes),
        BufferMinutes = TermsFields.Text(offering.BufferMinutes),
        Capacity = TermsFields.Text(offering.Capacity),
        TurnaroundHours = TermsFields.Text(offering.TurnaroundHours),
        Places = [.. offering.Places.Select(p => p.Value)],
        Coaches = [.. offering.Coaches.Select(c => c.Value)],
        Resources = [.. offering.Resources.Select(r => r.Value)],
        IsBookable = offering.IsBookable,
    };

    /// <summary>For a new one; with one coach or one place there is nothing to choose.</summary>
    internal static OfferingFields Suggested(OfferingFormView view)
    {
        var fields = new OfferingFields();
        fields.Coaches = [.. view.Coaches.Where(c => !c.IsClosed).Select(c => c.Id.Value)];
        if (view.Places.InUse.ToList() is [var place]) (fields.Places, fields.Resources) = ([place.Place.Id.Value], [.. place.InUse.Select(b => b.Id.Value)]);
        return fields;
    }

    /// <summary>Read as far as it can be; what is no amount or no rate is said at once, the rest by the check.</summary>
    internal Outcome<OfferingDetails> Read(Currency currency)
    {
        var price = MoneyText.Parse(PriceMinor, currency);
        if (!price.TryGet(out var money)) return Outcome<OfferingDetails>.Refused([.. price.Refusals.Select(r => r with { Field = nameof(PriceMinor) })]);
        if (!Terms.TryParse<OfferingKind>(Kind, out var kind)) return new Refusal("offering-kind", "Pick a kind from the list.", nameof(Kind));
        var remote = kind == OfferingKind.RemoteReview;
        return new OfferingDetails
        {
            Name = Name ?? "",
            Kind = kind,
            PriceMinor = money.MinorUnits,
            TaxBasisPoints = BasisPoints(TaxBasisPoints),
            Minutes = TermsFields.Number(Minutes),
            BufferMinutes = remote ? 0 : TermsFields.Number(BufferMinutes),
            Capacity = remote ? 1 : TermsFields.Number(Capacity),
            TurnaroundHours = remote ? TermsFields.Number(TurnaroundHours) : 0,
            Places = remote ? [] : [.. Places.Distinct().Select(PlaceId.From)],
            Coaches = [.. Coaches.Distinct().Select(AccountId.From)],
            Resources = remote ? [] : [.. Resources.Distinct().Select(ResourceId.From)],
            IsBookable = IsBookable,
        };
    }

    private static string Percent(int basisPoints) => $"{basisPoints / 100}{(basisPoints % 100 == 0 ? "" : "." + (basisPoints % 100).ToString("00", CultureInfo.InvariantCulture).TrimEnd('0'))}";

    /// <summary>Hundredths of a percent; what cannot be read or has more decimals becomes a rate the check refuses.</summary>
    private static int BasisPoints(string? percent)
    {
        var parts = (percent ?? "").Replace("%", "", StringComparison.Ordinal).Trim().Replace(',', '.').Split('.');
        if (parts.Length > 2 || parts[0].Length is 0 or > 3 || (parts.Length == 2 && parts[1].Length is 0 or > 2)) return -1;
        var decimals = parts.Length == 2 ? parts[1].PadRight(2, '0') : "00";
        return parts[0].All(char.IsAsciiDigit) && decimals.All(char.IsAsciiDigit) ? int.Parse(parts[0] + decimals, CultureInfo.InvariantCulture) : -1;
    }
}

namespace CoachOffice.Web.Features.Settings;

/// <summary>The terms of money as typed.</summary>
public sealed class MoneyFields
{
    public int Version { get; set; }

    public string? TaxMode { get; set; }

    public string? Rounding { get; set; }

    public string? TaxScope { get; set; }

    public string? LegalName { get; set; }

    public string? PostalAddress { get; set; }

    public string? TaxNumber { get; set; }

    public string? PaymentDays { get; set; }
}

namespace CoachOffice.Web.Features.Ledger;

/// <summary>One line of a charge as typed.</summary>
public sealed class ChargeLineFields
{
    public string? Text { get; set; }

    public string? Price { get; set; }

    public string? TaxPercent { get; set; }
}

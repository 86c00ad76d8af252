namespace CoachOffice.Web.Features.Ledger;

/// <summary>A package on the price list as typed.</summary>
public sealed class OfferFields
{
    public int Version { get; set; }

    public string? Name { get; set; }

    public string? Lessons { get; set; }

    public string? Price { get; set; }

    public string? TaxPercent { get; set; }

    public string? ValidMonths { get; set; } = "12";

    public bool IsShared { get; set; }

    public IList<Guid> Offerings { get; set; } = [];
}

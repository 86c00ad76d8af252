namespace CoachOffice.Web.Features.Ledger;

/// <summary>A payer's details as typed.</summary>
public sealed class DetailFields
{
    public int Version { get; set; }

    public string? Name { get; set; }

    public string? Email { get; set; }

    public string? PostalAddress { get; set; }
}

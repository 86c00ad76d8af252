namespace CoachOffice.Web.Features.Ledger;

/// <summary>A payment or refund as typed.</summary>
public sealed class PaymentFields
{
    /// <summary>Made when the form was shown: sent twice it is one entry.</summary>
    public Guid Id { get; set; }

    public string? Amount { get; set; }

    public string? Method { get; set; } = "cash";

    public string? Reference { get; set; }

    public string? Text { get; set; }
}

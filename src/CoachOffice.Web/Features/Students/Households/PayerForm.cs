using CoachOffice.Domain.Ledger;

namespace CoachOffice.Web.Features.Students.Households;

/// <summary>A payer's details as typed.</summary>
public sealed class PayerForm
{
    /// <summary>Made with the empty form; sending the same form twice makes one payer.</summary>
    public Guid Id { get; set; }

    /// <summary>The version the form was filled from; 0 for a new payer.</summary>
    public int Version { get; set; }

    public string? Name { get; set; }

    public string? Email { get; set; }

    public string? PostalAddress { get; set; }

    internal PayerDetails Details => new() { Name = Name?.Trim() ?? "", Email = Email?.Trim() ?? "", PostalAddress = PostalAddress?.Trim() ?? "" };

    internal static PayerForm Of(Payer payer) => new() { Id = payer.Id.Value, Version = payer.Version, Name = payer.Name, Email = payer.Email, PostalAddress = payer.PostalAddress };
}

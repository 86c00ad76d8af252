using CoachOffice.Domain.Students;

namespace CoachOffice.Domain.Ledger;

/// <summary>What a person enters about a payer.</summary>
public sealed record PayerDetails
{
    /// <summary>As written on receipts, in one line.</summary>
    public required string Name { get; init; }

    /// <summary>Where receipts and statements go; empty = they are printed.</summary>
    public string Email { get; init; } = "";

    /// <summary>As written on receipts, up to six lines; empty = none.</summary>
    public string PostalAddress { get; init; } = "";

    /// <summary>Everything that is wrong, each with its field and what would be right.</summary>
    public IReadOnlyList<Refusal> Check() => [.. CheckName(), .. CheckAddresses()];

    private IEnumerable<Refusal> CheckName()
    {
        if (!OneLine.Shows(Name) || Name.Length > 250) yield return new("payer-name", "Give the payer a name of up to 250 characters.", nameof(Name));
        else if (!OneLine.Fits(Name) || Name != StudentSearch.Whole(Name)) yield return new("payer-name-line", OneLine.Wanted, nameof(Name));
    }

    private IEnumerable<Refusal> CheckAddresses()
    {
        var mail = Email.Trim();
        if (mail.Length > 0 && !MailAddress.LooksRight(mail)) yield return new("payer-mail", $"'{Email}' is no mail address; write it like name@example.org.", nameof(Email));
        var lines = PostalAddress.Trim().ReplaceLineEndings("\n").Split('\n');
        if (lines.Length > 6 || PostalAddress.Length > 500) yield return new("payer-address-long", "A postal address may have up to six lines and 500 characters.", nameof(PostalAddress));
        if (lines.Any(line => !OneLine.Fits(line)) || PostalAddress != StudentSearch.Whole(PostalAddress))
            yield return new("payer-address", "The address holds a character that cannot be kept; type it again instead of pasting it.", nameof(PostalAddress));
    }
}

using NodaTime;

namespace CoachOffice.Domain.Ledger;

/// <summary>Who pays: a student, a parent, a club. One payer with several students is a household. Details are checked by <see cref="PayerDetails.Check"/> before they get here.</summary>
public sealed class Payer
{
    private Payer()
    {
    }

    public PayerId Id { get; private set; }

    public string Name { get; private set; } = "";

    /// <summary>Where receipts and statements go; empty = they are printed.</summary>
    public string Email { get; private set; } = "";

    /// <summary>Lines divided by a line feed; empty = none.</summary>
    public string PostalAddress { get; private set; } = "";

    public Instant AddedAt { get; private set; }

    /// <summary>Set when the last student they paid for was erased for good; only a pseudonym is left, and the sums.</summary>
    public Instant? ErasedAt { get; private set; }

    /// <summary>Concurrency token, raised at each save.</summary>
    public int Version { get; private set; }

    /// <summary>A new payer.</summary>
    public static Payer Register(PayerId id, PayerDetails details, Instant now)
    {
        var payer = new Payer { Id = id, AddedAt = now };
        payer.Change(details);
        return payer;
    }

    /// <summary>Takes over what a person entered.</summary>
    public void Change(PayerDetails details)
    {
        ArgumentNullException.ThrowIfNull(details);
        (Name, Email) = (details.Name.Trim(), details.Email.Trim());
        PostalAddress = details.PostalAddress.Trim().ReplaceLineEndings("\n");
    }

    /// <summary>Removes the person and keeps a pseudonym. The ledger's sums and the documents stay: tax law asks to keep them.</summary>
    public void Erase(Instant now)
    {
        Change(new PayerDetails { Name = $"Former payer {Id.Value.ToString("N")[^6..]}" });
        ErasedAt ??= now;
    }
}

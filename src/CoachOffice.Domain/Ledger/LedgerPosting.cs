namespace CoachOffice.Domain.Ledger;

/// <summary>One line of an entry. Insert-only.</summary>
public sealed class LedgerPosting
{
    private LedgerPosting()
    {
    }

    public EntryId EntryId { get; private set; }

    /// <summary>Place within the entry, from 1.</summary>
    public int Line { get; private set; }

    public LedgerAccount Account { get; private set; }

    /// <summary>Debit above zero, credit below; in the smallest unit of the practice's currency, which never changes once there are entries.</summary>
    public long AmountMinor { get; private set; }

    /// <summary>Rate of tax in hundredths of a percent; null where none is asked.</summary>
    public int? TaxBasisPoints { get; private set; }

    /// <summary>What it is for, where an entry has several lines. Never a name: the ledger outlives the person.</summary>
    public string Text { get; private set; } = "";

    /// <summary>The rate of tax it stands under, or null.</summary>
    public TaxRate? Rate => TaxBasisPoints is { } points ? new TaxRate(points) : null;

    internal static LedgerPosting Of(EntryId entry, int line, Movement movement) => new()
    {
        EntryId = entry,
        Line = line,
        Account = movement.Account,
        AmountMinor = movement.Amount.MinorUnits,
        TaxBasisPoints = movement.Rate?.BasisPoints,
        Text = movement.Text,
    };
}

using CoachOffice.Domain.Ledger;

namespace CoachOffice.UseCases.Ledger;

/// <summary>An entry in words, for pages, documents and the accountant.</summary>
public static class EntryWords
{
    /// <summary>What happened, and for what.</summary>
    public static string Of(LedgerEntry entry)
    {
        ArgumentNullException.ThrowIfNull(entry);
        var kind = Kind(entry);
        return entry.Text.Length == 0 ? kind : entry.Kind is EntryKind.Charge or EntryKind.PackageEnd or EntryKind.PackageReturn ? entry.Text : $"{kind}: {entry.Text}";
    }

    /// <summary>How money changed hands.</summary>
    public static string Of(PaymentMethod method) => method switch
    {
        PaymentMethod.Cash => "cash",
        PaymentMethod.CardTerminal => "card terminal",
        _ => "transfer",
    };

    private static string Kind(LedgerEntry entry) => entry.Kind switch
    {
        EntryKind.Charge => "Charge",
        EntryKind.Payment => $"Payment, {Of(entry.Method ?? PaymentMethod.Cash)}",
        EntryKind.PackageSale => "Package",
        EntryKind.CreditUse => "From package",
        EntryKind.PackageEnd => "Package ended",
        EntryKind.PackageReturn => "Package given back",
        EntryKind.Refund => $"Refund, {Of(entry.Method ?? PaymentMethod.Cash)}",
        EntryKind.WriteOff => "Written off",
        _ => "Reversed",
    };
}

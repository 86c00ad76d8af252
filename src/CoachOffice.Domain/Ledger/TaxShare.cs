namespace CoachOffice.Domain.Ledger;

/// <summary>The net amount and the tax, rate by rate, in a part of an entry that was paid. All parts of an entry together give the entry's own net and tax.</summary>
public static class TaxShare
{
    private static readonly LedgerAccount[] Earned = [LedgerAccount.Revenue, LedgerAccount.Prepaid];

    /// <summary>Of an entry: what it earned and taxed at each rate.</summary>
    public static IReadOnlyList<DocumentTax> Of(LedgerEntry entry)
    {
        ArgumentNullException.ThrowIfNull(entry);
        return
        [
            .. from posting in entry.Postings
               where posting.TaxBasisPoints is not null
               group posting by posting.TaxBasisPoints!.Value into rate
               orderby rate.Key descending
               select new DocumentTax(rate.Key, -rate.Where(p => Earned.Contains(p.Account)).Sum(p => p.AmountMinor), -rate.Where(p => p.Account == LedgerAccount.Tax).Sum(p => p.AmountMinor)),
        ];
    }

    /// <summary>Of a part of it, after another part was covered before.</summary>
    public static IReadOnlyList<DocumentTax> Of(LedgerEntry entry, Cover part, Currency currency)
    {
        ArgumentNullException.ThrowIfNull(part);
        var whole = Of(entry);
        if (whole.Sum(t => t.NetMinor + t.TaxMinor) <= 0 || whole.Any(t => t.NetMinor < 0 || t.TaxMinor < 0)) return [];
        long[] weights = [.. whole.SelectMany(t => new[] { t.NetMinor, t.TaxMinor })];
        var before = Allocation.By(new Money(part.BeforeMinor, currency), weights);
        var after = Allocation.By(new Money(part.BeforeMinor + part.AmountMinor, currency), weights);
        long Between(int place) => after[place].MinorUnits - before[place].MinorUnits;
        return [.. whole.Select((t, i) => new DocumentTax(t.BasisPoints, Between(2 * i), Between((2 * i) + 1)))];
    }

    /// <summary>Several put together, rate by rate.</summary>
    public static IReadOnlyList<DocumentTax> Sum(IEnumerable<DocumentTax> parts) =>
        [.. parts.GroupBy(p => p.BasisPoints).OrderByDescending(r => r.Key).Select(r => new DocumentTax(r.Key, r.Sum(p => p.NetMinor), r.Sum(p => p.TaxMinor)))];
}

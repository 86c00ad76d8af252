namespace CoachOffice.Domain.Ledger;

/// <summary>The two sides of each kind of entry. Whatever goes into one account comes out of others: they sum to nothing.</summary>
public static class Movements
{
    /// <summary>Something was given: the payer owes it with tax, we earned it without.</summary>
    public static IReadOnlyList<Movement> Charge(IReadOnlyList<TaxedLine> lines) => Owed(lines, LedgerAccount.Revenue);

    /// <summary>A package was sold: the payer owes it with tax, we owe lessons. The tax is due at the sale, since it is known what is bought.</summary>
    public static IReadOnlyList<Movement> Sale(TaxedLine line) => Owed([line], LedgerAccount.Prepaid);

    /// <summary>Money came.</summary>
    public static IReadOnlyList<Movement> Payment(Money amount, PaymentMethod method) => [new(AccountOf(method), amount), new(LedgerAccount.Receivable, -amount)];

    /// <summary>Money went back.</summary>
    public static IReadOnlyList<Movement> Refund(Money amount, PaymentMethod method) => [new(LedgerAccount.Receivable, amount), new(AccountOf(method), -amount)];

    /// <summary>Given up as lost. Relief of the tax in it is the accountant's affair; laws differ.</summary>
    public static IReadOnlyList<Movement> WriteOff(Money amount) => [new(LedgerAccount.WriteOff, amount), new(LedgerAccount.Receivable, -amount)];

    /// <summary>A share of what was prepaid is earned: by a lesson, or because the package ended.</summary>
    public static IReadOnlyList<Movement> Earned(Money share, TaxRate rate) => [new(LedgerAccount.Prepaid, share), new(LedgerAccount.Revenue, -share, rate)];

    /// <summary>Lessons of a package are given back: neither they nor their tax are owed any longer.</summary>
    public static IReadOnlyList<Movement> Returned(TaxedLine rest)
    {
        ArgumentNullException.ThrowIfNull(rest);
        return [new(LedgerAccount.Receivable, -rest.Gross), new(LedgerAccount.Prepaid, rest.Net, rest.Rate), .. Nonzero(new Movement(LedgerAccount.Tax, rest.Tax, rest.Rate))];
    }

    /// <summary>The same the other way.</summary>
    public static IReadOnlyList<Movement> Reversed(IEnumerable<LedgerPosting> postings, Currency currency)
    {
        ArgumentNullException.ThrowIfNull(postings);
        return [.. postings.Select(p => new Movement(p.Account, -new Money(p.AmountMinor, currency), p.Rate, p.Text))];
    }

    /// <summary>Where money of a method lies.</summary>
    public static LedgerAccount AccountOf(PaymentMethod method) => method switch
    {
        PaymentMethod.Cash => LedgerAccount.Cash,
        PaymentMethod.CardTerminal => LedgerAccount.CardTerminal,
        _ => LedgerAccount.Transfer,
    };

    private static IReadOnlyList<Movement> Owed(IReadOnlyList<TaxedLine> lines, LedgerAccount earned)
    {
        ArgumentNullException.ThrowIfNull(lines);
        var currency = lines[0].Net.Currency;
        var taxes = lines.GroupBy(l => l.Rate).Select(rate => new Movement(LedgerAccount.Tax, -Money.Sum(rate.Select(l => l.Tax), currency), rate.Key));
        return
        [
            new(LedgerAccount.Receivable, Money.Sum(lines.Select(l => l.Gross), currency)),
            .. lines.Select(l => new Movement(earned, -l.Net, l.Rate, l.Text)),
            .. taxes.SelectMany(Nonzero),
        ];
    }

    private static IEnumerable<Movement> Nonzero(Movement movement) => movement.Amount.IsZero ? [] : [movement];
}

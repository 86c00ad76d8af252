using CoachOffice.Domain.Ledger;
using CsCheck;

namespace CoachOffice.Domain.Tests.Ledger;

/// <summary>What no order of sales, uses, charges, payments, refunds, write-offs, endings and reversals may break, for prices with and without tax, in currencies of 0, 2 and 3 decimals.</summary>
public sealed class LedgerProperties
{
    private static readonly Gen<(int Rate, long Price)> Priced = Gen.Select(Gen.OneOf(0, 500, 700, 1900, 2000, 887), Gen.OneOf(Gen.Long[0, 20], Gen.Long[1, 1_000_000]));

    private static readonly Gen<Action<SomeLedger>> Deed = Gen.Frequency<Action<SomeLedger>>(
        (3, Priced.Array[1, 4].Select(lines => (Action<SomeLedger>)(l => l.Charge([.. lines.Select(x => (x.Price, x.Rate))])))),
        (2, Gen.Select(Priced, Gen.Int[1, 12]).Select(sale => (Action<SomeLedger>)(l => l.Sell(sale.Item1.Price, sale.Item2, sale.Item1.Rate)))),
        (6, Gen.Int[0, 99].Select(which => (Action<SomeLedger>)(l => l.Use(which)))),
        (1, Gen.Int[0, 99].Select(which => (Action<SomeLedger>)(l => l.End(which)))),
        (3, Gen.Long[1, 500_000].Select(amount => (Action<SomeLedger>)(l => l.Pay(amount)))),
        (1, Gen.Long[1, 500_000].Select(amount => (Action<SomeLedger>)(l => l.Refund(amount)))),
        (1, Gen.Long[1, 500_000].Select(amount => (Action<SomeLedger>)(l => l.WriteOff(amount)))),
        (3, Gen.Int[0, 999].Select(which => (Action<SomeLedger>)(l => l.Reverse(which)))));

    private static readonly Gen<TaxRule> Rules = Gen.Select(Gen.Enum<TaxMode>(), Gen.Enum<Rounding>(), Gen.Enum<TaxScope>(), (mode, rounding, scope) => new TaxRule(mode, rounding, scope));

    private static readonly Gen<SomeLedger> Ledgers =
        from rule in Rules
        from currency in Gen.OneOf("JPY", "EUR", "BHD")
        from deeds in Deed.Array[1, 40]
        select deeds.Aggregate(new SomeLedger(rule, Currency.Of(currency)), (ledger, deed) =>
        {
            deed(ledger);
            return ledger;
        });

    [Fact]
    public void Every_entry_balances() => Ledgers.Sample(ledger => Assert.All(ledger.Entries, e => Assert.Equal(0, e.Postings.Sum(p => p.AmountMinor))), iter: 2_000);

    [Fact]
    public void Not_a_cent_is_made_or_lost() => Gen.Select(Rules, Gen.OneOf("JPY", "EUR", "BHD"), Deed.Array[1, 40]).Sample((rule, code, deeds) =>
    {
        var ledger = new SomeLedger(rule, Currency.Of(code));
        foreach (var deed in deeds) deed(ledger);
        var earned = -(ledger.SumOn(LedgerAccount.Revenue) + ledger.SumOn(LedgerAccount.Prepaid));
        var tax = -ledger.SumOn(LedgerAccount.Tax);

        // A price with tax in it is what is owed, one without is what is earned; the other follows by the tax alone.
        Assert.Equal(ledger.Priced, rule.Mode == TaxMode.Inclusive ? earned + tax : earned);
        Assert.Equal(earned + tax, ledger.Balance + ledger.Handed + ledger.GivenUp);
        Assert.Equal(ledger.Handed, ledger.SumOn(LedgerAccount.Cash) + ledger.SumOn(LedgerAccount.Transfer));
        Assert.Equal(ledger.GivenUp, ledger.SumOn(LedgerAccount.WriteOff));
    }, iter: 5_000);

    [Fact]
    public void A_package_that_is_used_up_has_earned_exactly_its_price() => Ledgers.Sample(ledger =>
        Assert.All(ledger.Packages.Where(p => p.Used == p.Lessons && !p.IsEnded), p => Assert.True(p.Prepaid.IsZero)), iter: 2_000);

    [Fact]
    public void Of_a_package_that_ended_only_what_is_reserved_is_left()
    {
        var ended = new PackageCredits(10, 4, 2, new Money(101, Currency.Of("EUR")), IsEnded: true);

        Assert.Equal((2, 0, 51), (ended.Left, ended.Free, ended.NextShare.MinorUnits));
    }

    [Fact]
    public void All_uses_earn_the_shares_of_an_even_division() => Gen.Select(Gen.Long[0, 100_000], Gen.Int[1, 30]).Sample((price, lessons) =>
    {
        var whole = new Money(price, Currency.Of("EUR"));
        var credits = new PackageCredits(lessons, 0, 0, whole);
        var shares = new List<Money>();
        for (; credits.Left > 0; credits = credits with { Used = credits.Used + 1, Prepaid = credits.Prepaid - shares[^1] }) shares.Add(credits.NextShare);

        Assert.Equal(Allocation.Evenly(whole, lessons), shares);
    });

    [Fact]
    public void What_is_reversed_leaves_nothing() => Gen.Select(Rules, Priced.Array[1, 5]).Sample((rule, lines) =>
    {
        var ledger = new SomeLedger(rule, Currency.Of("EUR"));
        ledger.Charge([.. lines.Select(x => (x.Price, x.Rate))]);
        ledger.Reverse(0);
        Assert.All(Enum.GetValues<LedgerAccount>(), account => Assert.Equal(0, ledger.SumOn(account)));
    });
}

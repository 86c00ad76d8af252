using CoachOffice.Domain.Ledger;
using NodaTime;

namespace CoachOffice.Domain.Tests.Ledger;

public sealed class LedgerEntryTests
{
    private static readonly Currency Eur = Currency.Of("EUR");

    [Fact]
    public void A_charge_says_what_is_owed_earned_and_taxed()
    {
        var lines = new TaxRule(TaxMode.Inclusive, Rounding.HalfUp, TaxScope.PerLine).Of([Line("Lesson", 6000, 2000), Line("Range balls", 500, 2000), Line("Book", 1000, 0)]);

        var entry = LedgerEntry.Write(EntryKind.Charge, Facts(1), Movements.Charge(lines));

        (LedgerAccount, long, int?, string)[] expected =
        [
            (LedgerAccount.Receivable, 7500, null, ""), (LedgerAccount.Revenue, -5000, 2000, "Lesson"), (LedgerAccount.Revenue, -417, 2000, "Range balls"),
            (LedgerAccount.Revenue, -1000, 0, "Book"), (LedgerAccount.Tax, -1083, 2000, ""),
        ];
        Assert.Equal(expected, entry.Postings.Select(p => (p.Account, p.AmountMinor, p.TaxBasisPoints, p.Text)));
        Assert.Equal([1, 2, 3, 4, 5], entry.Postings.Select(p => p.Line));
    }

    [Fact]
    public void Two_sides_that_differ_are_a_defect()
    {
        Assert.Throws<InvalidOperationException>(() => LedgerEntry.Write(EntryKind.Payment, Facts(1), [new Movement(LedgerAccount.Cash, new Money(1, Eur)), new Movement(LedgerAccount.Receivable, new Money(-2, Eur))]));
        Assert.Throws<InvalidOperationException>(() => LedgerEntry.Write(EntryKind.Payment, Facts(1), [new Movement(LedgerAccount.Cash, new Money(0, Eur))]));
    }

    [Fact]
    public void A_card_number_is_never_written() =>
        Assert.Throws<InvalidOperationException>(() => LedgerEntry.Write(EntryKind.Payment, Facts(1) with { Reference = "4111 1111 1111 1111" }, Movements.Payment(new Money(1, Eur), PaymentMethod.CardTerminal)));

    [Fact]
    public void A_reversal_carries_the_same_names_and_is_not_reversed_itself()
    {
        var paid = LedgerEntry.Write(EntryKind.Payment, Facts(1) with { Method = PaymentMethod.Cash }, Movements.Payment(new Money(500, Eur), PaymentMethod.Cash));

        var back = paid.Reverse(Facts(2) with { PayerId = PayerId.From(FixedIds.Of(77)), Text = "wrong payer" }, Eur);

        Assert.Equal((EntryKind.Reversal, paid.Id, paid.PayerId, PaymentMethod.Cash, "wrong payer"), (back.Kind, back.Reverses, back.PayerId, back.Method, back.Text));
        Assert.Equal((-500, 500), (back.SumOn(LedgerAccount.Cash), back.SumOn(LedgerAccount.Receivable)));
        Assert.Throws<InvalidOperationException>(() => back.Reverse(Facts(3), Eur));
    }

    [Fact]
    public void Lessons_left_are_worth_their_part_of_price_and_tax()
    {
        var rest = new PackageCredits(10, 7, 0, new Money(15000, Eur)).Rest("3 lessons", new Money(9999, Eur), new TaxRate(2000));

        Assert.Equal((15000, 3000, 18000), (rest.Net.MinorUnits, rest.Tax.MinorUnits, rest.Gross.MinorUnits));
        var entry = LedgerEntry.Write(EntryKind.PackageReturn, Facts(1), Movements.Returned(rest));
        Assert.Equal((-18000, 15000, 3000), (entry.SumOn(LedgerAccount.Receivable), entry.SumOn(LedgerAccount.Prepaid), entry.SumOn(LedgerAccount.Tax)));
    }

    private static TaxLine Line(string text, long price, int rate) => new(text, new Money(price, Eur), new TaxRate(rate));

    private static EntryFacts Facts(int id) => new()
    {
        Id = EntryId.From(FixedIds.Of(id)),
        At = Instant.FromUtc(2026, 3, 2, 9, 0),
        On = new LocalDate(2026, 3, 2),
        PayerId = PayerId.From(FixedIds.Of(99)),
        By = "Dora Desk",
    };
}

using CoachOffice.Data;
using CoachOffice.Data.Ledger;
using CoachOffice.Domain.Ledger;
using CoachOffice.UseCases.Ledger;
using CoachOffice.UseCases.Ledger.Documents;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Ledger;

public abstract class DocumentsTests(OfficeFixture fixture)
{
    [Fact]
    public async Task Fifty_receipts_at_once_are_numbered_from_1_to_50()
    {
        var till = await Open();
        var payments = new List<EntryId>();
        for (var n = 0; n < 50; n++) payments.Add(await till.Pay(await till.Payer(await till.Student($"Payer {n}")), "10"));

        var receipts = await Task.WhenAll(payments.Select(p => till.Office.Must((IssueReceipt issue) => issue.For(p, till.Office.Desk))));

        Assert.Equal(50, receipts.Distinct().Count());
        Assert.Equal(Enumerable.Range(1, 50), await till.Office.Read(db => db.LedgerDocuments.OrderBy(d => d.Number).Select(d => d.Number).ToListAsync()));
    }

    [Fact]
    public async Task A_failed_transaction_gives_its_number_back()
    {
        var till = await Open();
        await till.Office.Do<OfficeDb, int>(async db =>
        {
            await using var transaction = await db.Database.BeginTransactionAsync();
            return await db.NextNumber(DocumentKind.Receipt, 2026, CancellationToken.None);
        });

        var receipt = await Receipt(till, await till.Pay(await till.Payer(await till.Student("Una")), "10"));

        Assert.Equal(("R\u00A02026-0001", 2026, 1), (receipt.Name, receipt.Year, receipt.Number));
    }

    [Fact]
    public async Task A_payment_asked_for_twice_has_one_receipt()
    {
        var till = await Open();
        var payment = await till.Pay(await till.Payer(await till.Student("Una")), "10");

        var both = await Task.WhenAll(Enumerable.Range(0, 4).Select(_ => till.Office.Do((IssueReceipt issue) => issue.For(payment, till.Office.Desk))));

        Assert.Single(both.Where(o => o.Succeeded).Select(o => o.Value).Distinct());
        Assert.Equal(1, await till.Office.Read(db => db.LedgerDocuments.CountAsync()));
    }

    [Fact]
    public async Task A_receipt_names_what_was_paid_oldest_first_with_the_tax_rate_by_rate()
    {
        var till = await Open();
        var payer = await till.Payer(await till.Student("Una"));
        await till.Charge(payer, "60.00", "20", "Fitting");
        await till.Charge(payer, "10.00", "5", "Book");
        await till.Charge(payer, "30.00", "20", "Range balls");

        var first = await Receipt(till, await till.Pay(payer, "80.00"));
        var second = await Receipt(till, await till.Pay(payer, "25.00"));

        Assert.Equal([("Fitting", 6000), ("Book", 1000), ("Range balls (part)", 1000)], first.Content.Lines.Select(l => (l.Text, l.AmountMinor)));
        Assert.Equal([(2000, 5833, 1167), (500, 952, 48)], first.Content.Taxes.Select(t => (t.BasisPoints, t.NetMinor, t.TaxMinor)));
        Assert.Equal([("Range balls (part)", 2000), ("Paid ahead, on account", 500)], second.Content.Lines.Select(l => (l.Text, l.AmountMinor)));
        Assert.Equal([(2000, 1667, 333)], second.Content.Taxes.Select(t => (t.BasisPoints, t.NetMinor, t.TaxMinor)));
        Assert.Equal((8000, "GBP", "Harbour Road Golf Practice", "Una Payson"), (first.TotalMinor, first.Content.Currency, first.Content.From[0], first.Content.To[0]));
    }

    [Fact]
    public async Task A_receipt_stays_as_it_was_when_names_change()
    {
        var till = await Open();
        var payer = await till.Payer(await till.Student("Una"));
        var receipt = await Receipt(till, await till.Pay(payer, "10"));
        var version = await till.Office.Read(db => db.Payers.Where(p => p.Id == payer).Select(p => p.Version).SingleAsync());

        await till.Office.Must((ChangePayer change) => change.To(payer, version, new PayerDetails { Name = "Another Name" }, till.Office.Desk));
        await till.Office.Must((ChangeMoneyTerms change) => change.To(0, new MoneyTermsDetails { LegalName = "Another Company" }, till.Office.Owner));

        var kept = await till.Office.Must((ReadDocument read) => read.Of(receipt.Id, till.Office.Desk));
        Assert.Equal(("Una Payson", "Harbour Road Golf Practice"), (kept.Document.Content.To[0], kept.Document.Content.From[0]));
    }

    [Fact]
    public async Task There_is_no_receipt_for_a_reversed_payment_and_one_written_before_says_so()
    {
        var till = await Open();
        var payer = await till.Payer(await till.Student("Una"));
        var (with, without) = (await till.Pay(payer, "10"), await till.Pay(payer, "11"));
        var receipt = await Receipt(till, with);
        await till.Reverse(with);
        await till.Reverse(without);

        Assert.Equal("payment-reversed", (await till.Office.Refuses((IssueReceipt issue) => issue.For(without, till.Office.Desk))).Single().Code);
        Assert.Equal(new LocalDate(2026, 3, 2), (await till.Office.Must((ReadDocument read) => read.Of(receipt.Id, till.Office.Desk))).ReversedOn);
    }

    [Fact]
    public async Task A_statement_goes_from_balance_to_balance()
    {
        var till = await Open();
        var payer = await till.Payer(await till.Student("Una"));
        await till.Charge(payer, "60.00", "20", "Fitting");
        till.Office.Time.Advance(TimeSpan.FromDays(10));
        await till.Pay(payer, "25.00");
        var wrong = await till.Charge(payer, "99.00", "20", "Wrong");
        await till.Reverse(wrong);
        await till.Charge(payer, "12.00", "20", "Range balls");
        till.Office.Time.Advance(TimeSpan.FromDays(10));
        await till.Charge(payer, "500.00", "20", "Later");

        var id = await till.Office.Must((IssueStatement issue) => issue.For(new StatementForm(payer, new LocalDate(2026, 3, 3), new LocalDate(2026, 3, 20)), till.Office.Desk));

        var statement = (await till.Office.Must((ReadDocument read) => read.Of(id, till.Office.Desk))).Document;
        Assert.Equal("S\u00A02026-0001", statement.Name);
        Assert.Equal((6000, 4700), (statement.Content.OpeningMinor, statement.TotalMinor));
        Assert.Equal([("Payment, cash", -2500), ("Wrong", 9900), ("Reversed: typed wrong", -9900), ("Range balls", 1200)], statement.Content.Lines.Select(l => (l.Text, l.AmountMinor)));
        Assert.Equal([(2000, 1000, 200)], statement.Content.Taxes.Select(t => (t.BasisPoints, t.NetMinor, t.TaxMinor)));
    }

    [Fact]
    public async Task A_statement_of_days_to_come_is_refused()
    {
        var till = await Open();
        var payer = await till.Payer(await till.Student("Una"));

        var refusals = await till.Office.Refuses((IssueStatement issue) => issue.For(new StatementForm(payer, new LocalDate(2026, 3, 1), new LocalDate(2026, 3, 3)), till.Office.Desk));

        Assert.Equal("statement-future", refusals.Single().Code);
    }

    private static async Task<LedgerDocument> Receipt(Till till, EntryId payment)
    {
        var id = await till.Office.Must((IssueReceipt issue) => issue.For(payment, till.Office.Desk));
        return (await till.Office.Must((ReadDocument read) => read.Of(id, till.Office.Desk))).Document;
    }

    private async Task<Till> Open() => Till.Without(await fixture.Another(opened: true));
}

public sealed class DocumentsOnPostgreSql(PostgreSqlOffice office) : DocumentsTests(office), IClassFixture<PostgreSqlOffice>;

public sealed class DocumentsOnSqlite(SqliteOffice office) : DocumentsTests(office), IClassFixture<SqliteOffice>;

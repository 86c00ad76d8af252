using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Ledger;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Ledger;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Tests.Ledger;

public abstract class TakePaymentTests(OfficeFixture fixture)
{
    [Fact]
    public async Task A_payment_lowers_what_is_owed_and_may_come_first()
    {
        var (till, payer) = await Someone();

        await till.Pay(payer, "20,00");
        Assert.Equal(-2000, await till.Balance(payer));
        await till.Charge(payer, "45.50");
        Assert.Equal(2550, await till.Balance(payer));
    }

    [Fact]
    public async Task The_same_form_twice_or_at_once_is_one_payment()
    {
        var (till, payer) = await Someone();
        var form = till.Form(payer, "20");

        var all = await Task.WhenAll(Enumerable.Range(0, 8).Select(_ => fixture.Office.Do((TakePayment take) => take.From(form, fixture.Office.Desk))));
        var again = await fixture.Office.Must((TakePayment take) => take.From(form, fixture.Office.Owner));

        Assert.All(all.Where(o => o.Succeeded), o => Assert.Equal(form.Id, o.Value));
        Assert.Equal(form.Id, again);
        Assert.Equal(-2000, await till.Balance(payer));
    }

    [Fact]
    public async Task A_used_form_with_another_amount_is_refused()
    {
        var (till, payer) = await Someone();
        var form = till.Form(payer, "20");
        await fixture.Office.Must((TakePayment take) => take.From(form, fixture.Office.Desk));

        var refusals = await fixture.Office.Refuses((TakePayment take) => take.From(form with { Amount = "25" }, fixture.Office.Desk));

        Assert.Equal("form-used", refusals.Single().Code);
        Assert.Equal(-2000, await till.Balance(payer));
    }

    [Fact]
    public async Task Card_numbers_never_enter_the_books()
    {
        var (till, payer) = await Someone();

        var refusals = await fixture.Office.Refuses((TakePayment take) => take.From(till.Form(payer, "20") with { Reference = "4111 1111 1111 1111" }, fixture.Office.Desk));

        Assert.Equal(("card-number", "Reference"), (refusals.Single().Code, refusals.Single().Field));
        Assert.Equal(0, await till.Balance(payer));
    }

    [Theory]
    [InlineData("0")]
    [InlineData("-5")]
    [InlineData("1,250")]
    [InlineData("")]
    public async Task What_is_no_amount_above_zero_is_refused(string amount)
    {
        var (till, payer) = await Someone();

        var refusals = await fixture.Office.Refuses((TakePayment take) => take.From(till.Form(payer, amount), fixture.Office.Desk));

        Assert.Equal("Amount", refusals.Single().Field);
    }

    [Fact]
    public async Task Money_goes_back_only_from_what_stands_on_account()
    {
        var (till, payer) = await Someone();
        Task<IReadOnlyList<Refusal>> Refused(string amount) => fixture.Office.Refuses((RefundMoney refund) => refund.From(till.Form(payer, amount), fixture.Office.Owner));
        Assert.Equal("refund-nothing", (await Refused("1")).Single().Code);
        await till.Pay(payer, "30");
        await till.Charge(payer, "12.50");
        Assert.Equal("refund-more", (await Refused("17.51")).Single().Code);

        var forms = new[] { till.Form(payer, "17.50"), till.Form(payer, "17.50") };
        var both = await Task.WhenAll(forms.Select(form => fixture.Office.Do((RefundMoney refund) => refund.From(form, fixture.Office.Owner))));

        Assert.Single(both, o => o.Succeeded);
        Assert.Equal(0, await till.Balance(payer));
    }

    [Fact]
    public async Task What_is_owed_can_be_given_up_but_not_more()
    {
        var (till, payer) = await Someone();
        await till.Charge(payer, "12.50");
        WriteOffForm Form(string amount) => new() { Id = till.NewEntry(), PayerId = payer, Amount = amount, Reason = "moved away" };

        Assert.Equal("write-off-more", (await fixture.Office.Refuses((WriteOffDebt w) => w.From(Form("12.51"), fixture.Office.Owner))).Single().Code);
        await fixture.Office.Must((WriteOffDebt w) => w.From(Form("12.50"), fixture.Office.Owner));

        Assert.Equal((0, 1250), (await till.Balance(payer), await OfPayer(payer, LedgerAccount.WriteOff)));
        Assert.Equal("write-off-nothing", (await fixture.Office.Refuses((WriteOffDebt w) => w.From(Form("1"), fixture.Office.Owner))).Single().Code);
    }

    [Fact]
    public async Task An_entry_is_reversed_once_and_both_stay()
    {
        var (till, payer) = await Someone();
        var wrong = await till.Charge(payer, "99", "20");

        var forms = Enumerable.Range(0, 4).Select(_ => new Reversing(till.NewEntry(), wrong, "typed wrong")).ToList();
        var all = await Task.WhenAll(forms.Select(form => fixture.Office.Do((ReverseEntry reverse) => reverse.From(form, fixture.Office.Owner))));

        var back = Assert.Single(all, o => o.Succeeded).Value;
        Assert.Equal(0, await till.Balance(payer));
        Assert.Equal(2, await fixture.Office.Read(db => db.LedgerEntries.CountAsync(e => e.PayerId == payer)));
        Assert.Equal("reversal-reversed", (await fixture.Office.Refuses((ReverseEntry reverse) => reverse.From(new Reversing(till.NewEntry(), back, "again"), fixture.Office.Owner))).Single().Code);
    }

    [Fact]
    public async Task The_desk_takes_payments_and_leaves_the_books_to_the_owner()
    {
        var (till, payer) = await Someone();
        await till.Charge(payer, "10");
        var office = fixture.Office;
        var refused = new[]
        {
            await office.Refuses((RefundMoney refund) => refund.From(till.Form(payer, "1"), office.Desk)),
            await office.Refuses((WriteOffDebt w) => w.From(new WriteOffForm { Id = till.NewEntry(), PayerId = payer, Amount = "1", Reason = "x" }, office.Coach)),
            await office.Refuses((ReverseEntry reverse) => reverse.From(new Reversing(till.NewEntry(), till.NewEntry(), "x"), office.Desk)),
            await office.Refuses((TakePayment take) => take.From(till.Form(payer, "1"), Actor.Student)),
        };

        Assert.All(refused, r => Assert.Equal(NotAllowed.Code, r.Single().Code));
    }

    private Task<long> OfPayer(PayerId payer, LedgerAccount account) =>
        fixture.Office.Read(db => db.LedgerEntries.Where(e => e.PayerId == payer).SelectMany(e => e.Postings).Where(p => p.Account == account).SumAsync(p => p.AmountMinor));

    private async Task<(Till Till, PayerId Payer)> Someone()
    {
        var till = Till.Without(fixture.Office);
        return (till, await till.Payer(await till.Student("Una")));
    }
}

public sealed class TakePaymentOnPostgreSql(PostgreSqlOffice office) : TakePaymentTests(office), IClassFixture<PostgreSqlOffice>;

public sealed class TakePaymentOnSqlite(SqliteOffice office) : TakePaymentTests(office), IClassFixture<SqliteOffice>;

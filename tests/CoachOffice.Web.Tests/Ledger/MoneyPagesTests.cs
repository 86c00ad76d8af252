using System.Net;
using AngleSharp.Dom;

namespace CoachOffice.Web.Tests.Ledger;

/// <summary>The pages of money, as the owner and the desk use them.</summary>
public sealed class MoneyPagesTests : IAsyncLifetime
{
    private readonly OfficeHost _office = new();
    private Visitor _owner = null!;

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync() => _owner = await _office.OpensThePractice();

    public ValueTask DisposeAsync()
    {
        _office.Dispose();
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task A_payer_is_charged_pays_and_gets_a_receipt()
    {
        var account = await _owner.OpensAccount("Una", "Payson");
        await _owner.Charges(account, "Range balls", "12,00", "20");
        Assert.Contains("GBP\u00A012.00 owed", _owner.Text, StringComparison.Ordinal);

        await _owner.Open(account + "/pay");
        Assert.Equal("12.00", _owner.Page.QuerySelector("#Input_Amount")!.GetAttribute("value"));
        await _owner.Send("main form", ("Input.Method", "card-terminal"), ("Input.Reference", "004512"));
        Assert.Contains("Nothing is owed", _owner.Text, StringComparison.Ordinal);

        await _owner.Send("form[action*='Receipt']");
        Assert.StartsWith("/documents/", _owner.Path, StringComparison.Ordinal);
        Assert.Matches("^Receipt R\u00A0[0-9]{4}-0001$", _owner.Heading);
        Assert.Contains("Range balls", _owner.Text, StringComparison.Ordinal);
        Assert.Contains("20\u00A0%", _owner.Text, StringComparison.Ordinal);
        Assert.Contains("no. 004512", _owner.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_form_of_a_payment_sent_twice_is_one_payment()
    {
        var account = await _owner.OpensAccount("Una", "Payson");
        await _owner.Open(account + "/pay");
        var id = _owner.Page.QuerySelector("input[name='Input.Id']")!.GetAttribute("value");
        await _owner.Send("main form", ("Input.Amount", "10"));
        await _owner.Open(account + "/pay");
        await _owner.Send("main form", ("Input.Amount", "10"), ("Input.Id", id));

        Assert.Contains("GBP\u00A010.00 on account", _owner.Text, StringComparison.Ordinal);
        await _owner.Open(account + "/pay");
        await _owner.Send("main form", ("Input.Amount", "11"), ("Input.Id", id));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, _owner.Status);
        Assert.Contains("sent before", _owner.Alert, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_card_number_is_refused_and_what_was_typed_stays()
    {
        var account = await _owner.OpensAccount("Una", "Payson");
        await _owner.Open(account + "/pay");
        await _owner.Send("main form", ("Input.Amount", "12,50"), ("Input.Reference", "4111 1111 1111 1111"));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, _owner.Status);
        Assert.Contains("Card data never belongs here", _owner.Text, StringComparison.Ordinal);
        Assert.Equal("12,50", _owner.Page.QuerySelector("#Input_Amount")!.GetAttribute("value"));
    }

    [Fact]
    public async Task A_wrong_entry_is_reversed_and_what_is_left_written_off()
    {
        var account = await _owner.OpensAccount("Una", "Payson");
        await _owner.Charges(account, "Wrong", "99");
        await _owner.Open(_owner.Page.QuerySelector("a[href$='/reverse']")!.GetAttribute("href")!);
        await _owner.Send("main form", ("Reason", "typed wrong"));
        Assert.Contains("Reversed: typed wrong", _owner.Text, StringComparison.Ordinal);
        Assert.Null(_owner.Page.QuerySelector("a[href$='/reverse']"));
        await _owner.Charges(account, "Balls", "5");
        await _owner.Open(account + "/write-off");
        await _owner.Send("main form", ("Input.Text", "moved away"));

        Assert.Contains("Written off: moved away", _owner.Text, StringComparison.Ordinal);
        Assert.Contains("Nothing is owed", _owner.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Money_on_account_goes_back()
    {
        var account = await _owner.OpensAccount("Una", "Payson");
        await _owner.Open(account + "/pay");
        await _owner.Send("main form", ("Input.Amount", "30"));
        await _owner.Open(account + "/refund");
        await _owner.Send("main form", ("Input.Amount", "31"));
        Assert.Contains("Only GBP\u00A030.00 stands on account", _owner.Text, StringComparison.Ordinal);
        await _owner.Send("main form", ("Input.Amount", "30"));

        Assert.Contains("Nothing is owed", _owner.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_statement_lists_the_period()
    {
        var account = await _owner.OpensAccount("Una", "Payson");
        await _owner.Charges(account, "Range balls", "12,00", "20");
        await _owner.Open(account + "/statement");
        await _owner.Send("main form");

        Assert.StartsWith("Statement S", _owner.Heading, StringComparison.Ordinal);
        Assert.Contains("Balance, to be paid", _owner.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Who_owes_stands_on_the_page_of_money_and_the_books_go_to_the_accountant()
    {
        var account = await _owner.OpensAccount("=Una", "Payson");
        await _owner.Charges(account, "-Range balls", "12,00", "20");
        await _owner.Open("/money");
        Assert.Contains("=Una Payson", _owner.Page.QuerySelector("table.money")!.TextContent, StringComparison.Ordinal);
        await _owner.Open("/money/earned");
        Assert.Contains("GBP\u00A010.00", _owner.Page.QuerySelector("tr.total")!.TextContent, StringComparison.Ordinal);

        await _owner.Open("/money/export");
        await _owner.Send("main form", ("FirstDay", AccountSteps.Day(-30)), ("LastDay", AccountSteps.Day(1)));

        // RFC 4180: CRLF. Text that begins like a formula is escaped (OWASP ASVS 5.0.0, V1.2.10), a negative amount stays a number.
        var lines = (await _owner.Answer.Content.ReadAsStringAsync(Ct)).Split("\r\n");
        Assert.Equal("text/csv", _owner.Answer.Content.Headers.ContentType!.MediaType);
        Assert.Equal(5, lines.Length);
        Assert.Contains("'=Una Payson", lines[1], StringComparison.Ordinal);
        Assert.Contains("'-Range balls", lines[2], StringComparison.Ordinal);
        Assert.Contains(",revenue,-10.00,GBP,20,", lines[2], StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_desk_takes_payments_and_sees_no_books()
    {
        var account = await _owner.OpensAccount("Una", "Payson");
        await _owner.Charges(account, "Balls", "5");
        var desk = await _owner.LetsIn(_office, "desk");
        await desk.Open(account);
        Assert.Equal(HttpStatusCode.OK, desk.Status);
        Assert.Null(desk.Page.QuerySelector("a[href$='/reverse'], a[href$='/write-off']"));
        await desk.Open("/money");
        Assert.Null(desk.Page.QuerySelector("a[href='/money/earned']"));

        await desk.Open(account + "/pay");
        await desk.Send("main form");
        Assert.Contains("Nothing is owed", desk.Text, StringComparison.Ordinal);
        foreach (var closed in new[] { account + "/refund", account + "/write-off", "/money/earned", "/money/export", "/prices/packages", "/settings/money" })
        {
            await desk.Open(closed);
            Assert.Equal(HttpStatusCode.Forbidden, desk.Status);
        }
    }
}

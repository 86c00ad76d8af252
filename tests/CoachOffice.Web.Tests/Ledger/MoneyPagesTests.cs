using System.Globalization;
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
        var account = await Account("Una", "Payson");
        await Charge(account, "Range balls", "12,00", "20");
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
        var account = await Account("Una", "Payson");
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
        var account = await Account("Una", "Payson");
        await _owner.Open(account + "/pay");
        await _owner.Send("main form", ("Input.Amount", "12,50"), ("Input.Reference", "4111 1111 1111 1111"));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, _owner.Status);
        Assert.Contains("Card data never belongs here", _owner.Text, StringComparison.Ordinal);
        Assert.Equal("12,50", _owner.Page.QuerySelector("#Input_Amount")!.GetAttribute("value"));
    }

    [Fact]
    public async Task A_package_is_put_on_the_list_sold_and_given_back()
    {
        await _owner.Open("/prices/packages");
        await _owner.Send("main form", ("Input.Name", "Ten hours"), ("Input.Lessons", "10"), ("Input.Price", "400"), ("Input.TaxPercent", "20"));
        Assert.Contains("Ten hours", _owner.Text, StringComparison.Ordinal);
        var account = await Account("Una", "Payson");
        await _owner.Open(account + "/sell");
        await _owner.Send("main form");
        Assert.Contains("10 of 10 left", _owner.Text, StringComparison.Ordinal);
        Assert.Contains("GBP\u00A0400.00 owed", _owner.Text, StringComparison.Ordinal);

        await _owner.Open(_owner.Page.QuerySelector("a[href^='/packages/']")!.GetAttribute("href")!);
        await _owner.Send("form[action*='Extend']", ("LastDay", Day(500)));
        Assert.Contains("The last day is moved", _owner.Text, StringComparison.Ordinal);
        await _owner.Open(_owner.Page.QuerySelector("a[href^='/packages/']")!.GetAttribute("href")!);
        await _owner.Send("form[action*='Return']");
        Assert.Contains("given back", _owner.Text, StringComparison.Ordinal);
        Assert.Contains("Nothing is owed", _owner.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_wrong_entry_is_reversed_and_what_is_left_written_off()
    {
        var account = await Account("Una", "Payson");
        await Charge(account, "Wrong", "99");
        await _owner.Open(_owner.Page.QuerySelector("a[href$='/reverse']")!.GetAttribute("href")!);
        await _owner.Send("main form", ("Reason", "typed wrong"));
        Assert.Contains("Reversed: typed wrong", _owner.Text, StringComparison.Ordinal);
        Assert.Null(_owner.Page.QuerySelector("a[href$='/reverse']"));
        await Charge(account, "Balls", "5");
        await _owner.Open(account + "/write-off");
        await _owner.Send("main form", ("Input.Text", "moved away"));

        Assert.Contains("Written off: moved away", _owner.Text, StringComparison.Ordinal);
        Assert.Contains("Nothing is owed", _owner.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Money_on_account_goes_back()
    {
        var account = await Account("Una", "Payson");
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
        var account = await Account("Una", "Payson");
        await Charge(account, "Range balls", "12,00", "20");
        await _owner.Open(account + "/statement");
        await _owner.Send("main form");

        Assert.StartsWith("Statement S", _owner.Heading, StringComparison.Ordinal);
        Assert.Contains("Balance, to be paid", _owner.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Who_owes_stands_on_the_page_of_money_and_the_books_go_to_the_accountant()
    {
        var account = await Account("=Una", "Payson");
        await Charge(account, "-Range balls", "12,00", "20");
        await _owner.Open("/money");
        Assert.Contains("=Una Payson", _owner.Page.QuerySelector("table.money")!.TextContent, StringComparison.Ordinal);
        await _owner.Open("/money/earned");
        Assert.Contains("GBP\u00A010.00", _owner.Page.QuerySelector("tr.total")!.TextContent, StringComparison.Ordinal);

        await _owner.Open("/money/export");
        await _owner.Send("main form", ("FirstDay", Day(-30)), ("LastDay", Day(1)));

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
        var account = await Account("Una", "Payson");
        await Charge(account, "Balls", "5");
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

    [Fact]
    public async Task The_terms_of_money_stand_on_receipts()
    {
        await _owner.Open("/settings/money");
        await _owner.Send("main form", ("Input.LegalName", "Hill Lane Golf Ltd"), ("Input.PostalAddress", "1 Hill Lane\nTown"), ("Input.TaxNumber", "GB 123"), ("Input.TaxMode", "exclusive"));
        var account = await Account("Una", "Payson");
        await Charge(account, "Balls", "10", "20");
        Assert.Contains("GBP\u00A012.00 owed", _owner.Text, StringComparison.Ordinal);
        await _owner.Open(account + "/statement");
        await _owner.Send("main form");

        Assert.Contains("Hill Lane Golf Ltd", _owner.Text, StringComparison.Ordinal);
        Assert.Contains("Tax number GB 123", _owner.Text, StringComparison.Ordinal);
    }

    /// <summary>So many days from today, as a date field sends it.</summary>
    private static string Day(int fromToday) => TimeProvider.System.GetUtcNow().AddDays(fromToday).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private async Task Charge(string account, string what, string price, string tax = "")
    {
        await _owner.Open(account + "/charge");
        await _owner.Send("main form", ("Input.Lines[0].Text", what), ("Input.Lines[0].Price", price), ("Input.Lines[0].TaxPercent", tax));
        Assert.Equal(account, _owner.Path);
    }

    /// <summary>A student with an account, opened from their page; gives its address.</summary>
    private async Task<string> Account(string given, string family)
    {
        await _owner.Open("/students/new");
        await _owner.Send("main form", ("Input.GivenName", given), ("Input.FamilyName", family), ("Input.Email", "una@example.org"));
        await _owner.Open(_owner.Path + "/account");
        await _owner.Send("main form");
        Assert.StartsWith("/payers/", _owner.Path, StringComparison.Ordinal);
        return _owner.Path;
    }
}

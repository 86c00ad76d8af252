using AngleSharp.Dom;

namespace CoachOffice.Web.Tests.Ledger;

/// <summary>The price list and the terms of money, up to what they do to an account.</summary>
public sealed class PriceListPagesTests : IAsyncLifetime
{
    private readonly OfficeHost _office = new();
    private Visitor _owner = null!;

    public async ValueTask InitializeAsync() => _owner = await _office.OpensThePractice();

    public ValueTask DisposeAsync()
    {
        _office.Dispose();
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task A_package_is_put_on_the_list_sold_and_given_back()
    {
        await _owner.Open("/prices/packages");
        await _owner.Send("main form", ("Input.Name", "Ten hours"), ("Input.Lessons", "10"), ("Input.Price", "400"), ("Input.TaxPercent", "20"));
        Assert.Contains("Ten hours", _owner.Text, StringComparison.Ordinal);
        var account = await _owner.OpensAccount("Una", "Payson");
        await _owner.Open(account + "/sell");
        await _owner.Send("main form");
        Assert.Contains("10 of 10 left", _owner.Text, StringComparison.Ordinal);
        Assert.Contains("GBP\u00A0400.00 owed", _owner.Text, StringComparison.Ordinal);

        await _owner.Open(_owner.Page.QuerySelector("a[href^='/packages/']")!.GetAttribute("href")!);
        await _owner.Send("form[action*='Extend']", ("LastDay", AccountSteps.Day(500)));
        Assert.Contains("The last day is moved", _owner.Text, StringComparison.Ordinal);
        await _owner.Open(_owner.Page.QuerySelector("a[href^='/packages/']")!.GetAttribute("href")!);
        await _owner.Send("form[action*='Return']");
        Assert.Contains("given back", _owner.Text, StringComparison.Ordinal);
        Assert.Contains("Nothing is owed", _owner.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_terms_of_money_stand_on_receipts()
    {
        await _owner.Open("/settings/money");
        await _owner.Send("main form", ("Input.LegalName", "Hill Lane Golf Ltd"), ("Input.PostalAddress", "1 Hill Lane\nTown"), ("Input.TaxNumber", "GB 123"), ("Input.TaxMode", "exclusive"));
        var account = await _owner.OpensAccount("Una", "Payson");
        await _owner.Charges(account, "Balls", "10", "20");
        Assert.Contains("GBP\u00A012.00 owed", _owner.Text, StringComparison.Ordinal);
        await _owner.Open(account + "/statement");
        await _owner.Send("main form");

        Assert.Contains("Hill Lane Golf Ltd", _owner.Text, StringComparison.Ordinal);
        Assert.Contains("Tax number GB 123", _owner.Text, StringComparison.Ordinal);
    }
}

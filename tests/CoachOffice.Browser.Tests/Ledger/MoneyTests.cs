using CoachOffice.Browser.Tests.Rulebook;

namespace CoachOffice.Browser.Tests.Ledger;

/// <summary>The desk's path through money: price list, a package, a charge, a payment, its receipt; each page fit to be seen at three sizes.</summary>
public sealed class MoneyTests(Chromium chromium) : IClassFixture<Chromium>
{
    [Fact]
    public async Task A_package_is_sold_something_charged_paid_and_a_receipt_written()
    {
        await using var office = new RunningOffice();
        await using var window = await chromium.Open();
        var owner = new Person(window, office.Url);
        await new RulebookWalk(owner).OpensThePracticeWithOneStudent();
        await owner.GoTo(owner.Path + "/account");
        await owner.Press("Open it");
        await window.LookAt("payer-empty");
        var account = owner.Path;
        await Terms(owner, window);
        await Prices(owner, window);

        await owner.GoTo(account + "/sell");
        await window.LookAt("sell");
        await owner.Press("Sell it");
        await owner.GoTo(account + "/charge");
        await owner.Type("Input.Lines[0].Text", "Fitting of a set of irons with lofts and lies measured and bent");
        await owner.Type("Input.Lines[0].Price", "85,00");
        await owner.Type("Input.Lines[0].TaxPercent", "20");
        await window.LookAt("charge");
        await owner.Press("Charge it");
        await owner.GoTo(account + "/pay");
        await owner.Type("Input.Amount", "150");
        await window.LookAt("pay");
        await owner.Press("Note the payment");
        await window.LookAt("payer");
        await owner.Press("Write a receipt");
        await owner.Sees("Receipt R");
        await window.LookAt("receipt");
        await owner.GoTo("/money");
        await window.LookAt("money");
        await owner.GoTo("/money/earned");
        await window.LookAt("earned");

        Assert.Empty(window.Complaints);
    }

    private static async Task Terms(Person owner, Window window)
    {
        await owner.GoTo("/settings/money");
        await owner.Type("Input.LegalName", "Hill Lane Golf Lessons Ltd");
        await owner.Type("Input.PostalAddress", "1 Hill Lane\nUpper Dale\nDL1 2AB");
        await owner.Type("Input.TaxNumber", "GB 123 4567 89");
        await window.LookAt("money-terms");
        await owner.Press("Save");
    }

    private static async Task Prices(Person owner, Window window)
    {
        await owner.GoTo("/prices/packages");
        await owner.Type("Input.Name", "Ten private hours");
        await owner.Type("Input.Lessons", "10");
        await owner.Type("Input.Price", "480");
        await owner.Type("Input.TaxPercent", "20");
        await window.LookAt("package-offer");
        await owner.Press("Save");
        await window.LookAt("prices");
    }
}

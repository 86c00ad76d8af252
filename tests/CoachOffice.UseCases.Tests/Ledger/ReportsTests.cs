using System.Text;
using CoachOffice.Domain.Ledger;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Ledger;
using CoachOffice.UseCases.Ledger.Documents;
using CoachOffice.UseCases.Ledger.Reports;
using CoachOffice.UseCases.FollowUps;
using CoachOffice.UseCases.Students;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;
using MimeKit;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Ledger;

public abstract class ReportsTests(OfficeFixture fixture)
{
    [Fact]
    public async Task Who_owes_longest_stands_first_with_the_days_overdue()
    {
        var (till, una) = await Open();
        var (first, second, held) = (await till.Payer(una), await till.Payer(await till.Student("Dos")), await till.Payer(await till.Student("Tres")));
        await till.Charge(first, "30");
        await till.Pay(held, "12");
        till.Office.Time.Advance(TimeSpan.FromDays(16));
        await till.Charge(first, "10");
        await till.Charge(second, "99");
        await till.Pay(first, "5");

        var view = await till.Office.Must((MoneyPage money) => money.Now(till.Office.Desk));

        // Fourteen days to pay: the charge of day 0 is two days overdue on day 16.
        Assert.Equal([("Una Payson", 3500, 2500, 2), ("Dos Payson", 9900, 0, 0)], view.Owing.Select(r => (r.Name, r.Balance.MinorUnits, r.Overdue.MinorUnits, r.DaysOverdue)));
        Assert.Equal((13400, 2500, 1200), (view.Owed.MinorUnits, view.Overdue.MinorUnits, view.Held.MinorUnits));
    }

    [Fact]
    public async Task What_was_earned_adds_up_by_month_offering_and_coach()
    {
        var (till, una) = await Open();
        await till.Came(await till.Book(una, new LocalDate(2026, 3, 4)));
        await till.Charge(await till.Payer(una), "12", "20");
        till.Office.Time.Advance(TimeSpan.FromDays(31));
        await till.Pay(await till.Payer(una), "50");
        await till.Charge(await till.Payer(una), "6", "20");

        var view = await till.Office.Must((EarnedPage earned) => earned.Of(null, till.Office.Owner));

        Assert.Equal([(3, 5500, 200, 0), (4, 500, 100, 5000)], view.Months.Select(m => (m.Month, m.Earned.MinorUnits, m.Tax.MinorUnits, m.Came.MinorUnits)));
        Assert.Equal((6000, 6000, 6000), (view.Total.Earned.MinorUnits, view.Offerings.Sum(o => o.Earned.MinorUnits), view.Coaches.Sum(c => c.Earned.MinorUnits)));
        Assert.Equal([("Private hour", 4500), ("Not from a lesson", 1500)], view.Offerings.Select(o => (o.Name, o.Earned.MinorUnits)));
        Assert.Equal(till.Office.Coach.Name, view.Coaches[0].Name);
        Assert.Equal(NotAllowed.Code, (await till.Office.Refuses((EarnedPage earned) => earned.Of(null, till.Office.Coach))).Single().Code);
    }

    // Check strings of OWASP ASVS 5.0.0, V1.2.10 and OWASP's page on CSV injection; RFC 4180 for the form.
    [Theory]
    [InlineData("=1+1")]
    [InlineData("+1")]
    [InlineData("-2+3")]
    [InlineData("@SUM(A1)")]
    public async Task Text_that_begins_like_a_formula_is_escaped_and_amounts_stay_numbers(string text)
    {
        var (till, una) = await Open();
        await till.Charge(await till.Payer(una), "12.34", "20", text);

        var lines = await Export(till);

        Assert.Equal(5, lines.Length);
        Assert.Contains($",'{text},", lines[2], StringComparison.Ordinal);
        Assert.Contains(",revenue,-10.28,GBP,20,", lines[2], StringComparison.Ordinal);
        Assert.Contains(",receivable,12.34,GBP,,", lines[1], StringComparison.Ordinal);
    }

    [Fact]
    public async Task All_rows_of_the_export_sum_to_nothing_and_lie_in_the_period()
    {
        var (till, una) = await Open();
        await till.Charge(await till.Payer(una), "12.34", "20");
        till.Office.Time.Advance(TimeSpan.FromDays(40));
        await till.Charge(await till.Payer(una), "5");

        var rows = (await Export(till))[1..^1];

        Assert.Equal(3, rows.Length);
        Assert.Equal(0m, rows.Sum(r => decimal.Parse(r.Split(',')[6], System.Globalization.CultureInfo.InvariantCulture)));
        Assert.Equal(NotAllowed.Code, (await till.Office.Refuses((ExportLedger export) => export.Of(new LocalDate(2026, 3, 1), new LocalDate(2026, 3, 31), till.Office.Desk))).Single().Code);
    }

    [Fact]
    public async Task A_receipt_goes_to_the_payer_once_a_day_and_names_number_amount_and_tax()
    {
        var (till, una) = await Open();
        var payer = await till.Payer(una);
        await till.Office.Must((ChangePayer change) => change.To(payer, 1, new PayerDetails { Name = "Una Payson", Email = "una@example.org" }, till.Office.Desk));
        await till.Charge(payer, "60.00", "20", "Fitting");
        var receipt = await till.Office.Must(async (IssueReceipt issue) => await issue.For(await till.Pay(payer, "60"), till.Office.Desk));

        await till.Office.Must((MailDocument mail) => mail.Send(receipt, till.Office.Desk));
        await till.Office.Must((MailDocument mail) => mail.Send(receipt, till.Office.Desk));
        await till.Office.Do((SweepMessages sweep) => sweep.Once(CancellationToken.None));

        var letter = await MimeMessage.LoadAsync(Assert.Single(Directory.GetFiles(Path.Combine(till.Office.Folder, "mail"))));
        Assert.Equal("una@example.org", letter.To.Mailboxes.Single().Address);
        var body = letter.TextBody!.Replace('\u00A0', ' ');
        Assert.Contains("receipt R 2026-0001", letter.Subject, StringComparison.Ordinal);
        Assert.Contains("GBP 60.00 came on 2 March 2026 (cash)", body, StringComparison.Ordinal);
        Assert.Contains("- 2 March 2026: Fitting, GBP 60.00", body, StringComparison.Ordinal);
        Assert.Contains("- 20 %: GBP 10.00 on GBP 50.00", body, StringComparison.Ordinal);
        Assert.DoesNotContain("http", body, StringComparison.Ordinal);
        Assert.Empty(letter.Attachments);
    }

    [Fact]
    public async Task Without_a_mail_address_it_is_printed_and_after_erasing_no_letter_is_left()
    {
        var (till, una) = await Open();
        var payer = await till.Payer(una);
        await till.Charge(payer, "60.00");
        var statement = await till.Office.Must((IssueStatement issue) => issue.For(new StatementForm(payer, new LocalDate(2026, 3, 1), new LocalDate(2026, 3, 2)), till.Office.Desk));
        await till.Office.Must((ChangePayer change) => change.To(payer, 1, new PayerDetails { Name = "Una Payson" }, till.Office.Desk));
        Assert.Equal("payer-no-mail", (await till.Office.Refuses((MailDocument mail) => mail.Send(statement, till.Office.Desk))).Single().Code);
        await till.Office.Must((ChangePayer change) => change.To(payer, 2, new PayerDetails { Name = "Una Payson", Email = "una@example.org" }, till.Office.Desk));
        await till.Office.Must((MailDocument mail) => mail.Send(statement, till.Office.Desk));
        await till.Office.Do((SweepMessages sweep) => sweep.Once(CancellationToken.None));
        Assert.Single(Directory.GetFiles(Path.Combine(till.Office.Folder, "mail")));

        await till.Office.Must((EraseStudent erase) => erase.ForGood(una, till.Office.Owner));

        Assert.Empty(Directory.GetFiles(Path.Combine(till.Office.Folder, "mail")));
        Assert.Equal(["LedgerDocuments.Content: payson"], await TextSearch.Everywhere(till.Office, "payson"));
        Assert.Equal(6000, await till.Balance(payer));
    }

    private static async Task<string[]> Export(Till till)
    {
        var bytes = await till.Office.Must((ExportLedger export) => export.Of(new LocalDate(2026, 3, 1), new LocalDate(2026, 3, 31), till.Office.Owner));
        return Encoding.UTF8.GetString(bytes).Split("\r\n");
    }

    private async Task<(Till Till, StudentId Una)> Open()
    {
        var till = await Till.Of(await fixture.Another(opened: true));
        return (till, await till.Student("Una"));
    }
}

public sealed class ReportsOnPostgreSql(PostgreSqlOffice office) : ReportsTests(office), IClassFixture<PostgreSqlOffice>;

public sealed class ReportsOnSqlite(SqliteOffice office) : ReportsTests(office), IClassFixture<SqliteOffice>;

namespace CoachOffice.Browser.Tests.Bookings;

/// <summary>A new office's first day from one end to the other, as its owner goes through it: two coaches, a booking, a move, a late cancellation, a package, a payment, a printed statement.</summary>
public sealed class OneDayTests(Chromium chromium) : IClassFixture<Chromium>
{
    [Fact]
    public async Task Two_coaches_are_set_up_and_a_student_books_moves_cancels_late_buys_pays_and_gets_a_statement()
    {
        await using var office = new RunningOffice();
        await using var window = await chromium.Open();
        var owner = new Person(window, office.Url);
        await SetsUp(owner);
        var student = await Registers(owner);

        await Books(owner, student);
        await owner.Type("Input.At", "15:30");
        await owner.Press("Move");
        await owner.Sees("15:30–16:30");
        await owner.Sees("is owed");
        await owner.Press("The student cancels");
        await owner.Sees("Cancelled");
        var account = await Account(owner, student);
        await owner.Sees("22.50 owed");

        await BuysAndPays(owner, account);
        await owner.GoTo(account + "/statement");
        await owner.Type("FirstDay", "2026-05-01");
        await owner.Type("LastDay", "2026-05-04");
        await owner.Press("Write the statement");
        await owner.Sees("Statement S");
        await owner.Sees("22.50");
        await window.LookAt("day-statement");
        await Prints(window);

        await Books(owner, student);
        await owner.GoTo(account);
        await owner.Sees("5 of 5 left, 1 booked");
        await window.LookAt("day-account");
        Assert.Empty(window.Complaints);
    }

    private static async Task SetsUp(Person owner)
    {
        await SettingUp.Opens(owner);
        await owner.GoTo("/settings/accounts");
        await owner.Type("Input.DisplayName", "Bartholomew Quillfeather-Ashworth");
        await owner.Type("Input.Email", "bart@example.org");
        await owner.Type("Input.Password", "seven slow barges pass");
        await owner.Type("Input.Policy", "coach");
        await owner.Press("Add the account");
        await SettingUp.AddsPlace(owner, "Hill Lane range", "2 Hill Lane", "Bay 1", "Bay 2");
        await owner.GoTo("/settings/offering");
        await owner.Type("Input.Name", "Private hour");
        await owner.Type("Input.Kind", "private");
        await owner.Type("Input.PriceMinor", "45,00");
        await owner.Page.EvaluateExpressionAsync("document.querySelectorAll('#Input_Coaches input, #Input_Places > .choice input').forEach(i => i.checked = true)");
        await owner.Press("Add the offering");
        await SettingUp.AddsHours(owner, "08:00", "18:00", 1, 2, 3, 4, 5);
        await owner.GoTo("/calendar?view=day&coach=all&day=2026-05-04");
        await owner.Sees("Bartholomew Quillfeather-Ashworth");
    }

    private static async Task<string> Registers(Person owner)
    {
        await owner.GoTo("/students/new");
        await owner.Type("Input.GivenName", "Oluwaseun-Bartholomew");
        await owner.Type("Input.FamilyName", "Featherstonehaugh");
        await owner.Type("Input.Email", "oluwaseun@example.org");
        await owner.Type("Input.BirthDate", "1988-06-14");
        await owner.Press("Add the student");
        return owner.Path.Split('/')[^1];
    }

    private static async Task Books(Person owner, string student)
    {
        await owner.GoTo($"/bookings/new?student={student}&day=2026-05-04&at=14:00");
        await owner.Press("Free times of this coach");
        await owner.Press("14:00");
        await owner.Press("Book");
        await owner.Sees("14:00–15:00");
        await owner.Sees("Oluwaseun");
    }

    private static async Task<string> Account(Person owner, string student)
    {
        await owner.GoTo($"/students/{student}/account");
        if (owner.Path.EndsWith("/account", StringComparison.Ordinal)) await owner.Press("Open it");
        return owner.Path;
    }

    private static async Task BuysAndPays(Person owner, string account)
    {
        await owner.GoTo("/prices/packages");
        await owner.Type("Input.Name", "Five private hours");
        await owner.Type("Input.Lessons", "5");
        await owner.Type("Input.Price", "200");
        await owner.Press("Save");
        await owner.GoTo(account + "/sell");
        await owner.Press("Sell it");
        await owner.GoTo(account + "/pay");
        await owner.Type("Input.Amount", "222,50");
        await owner.Press("Note the payment");
        await owner.Press("Write a receipt");
        await owner.Sees("Receipt R");
    }

    // As a browser prints it: one file that is there and is no empty page.
    private static async Task Prints(Window window)
    {
        var path = Path.Combine(Path.GetTempPath(), $"statement-{Environment.ProcessId}.pdf");
        await window.Print(path);
        Assert.True(new FileInfo(path).Length > 5_000);
        if (Environment.GetEnvironmentVariable("COACHOFFICE_PICTURES") is { Length: > 0 } folder) File.Copy(path, Path.Combine(folder, "day-statement.pdf"), overwrite: true);
        File.Delete(path);
    }
}

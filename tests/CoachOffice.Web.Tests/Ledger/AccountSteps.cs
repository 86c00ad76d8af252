using System.Globalization;

namespace CoachOffice.Web.Tests.Ledger;

/// <summary>Steps many tests of money begin with.</summary>
internal static class AccountSteps
{
    /// <summary>A student with an account, opened from their page; gives its address.</summary>
    public static async Task<string> OpensAccount(this Visitor owner, string given, string family)
    {
        await owner.Open("/students/new");
        await owner.Send("main form", ("Input.GivenName", given), ("Input.FamilyName", family), ("Input.Email", "una@example.org"));
        await owner.Open(owner.Path + "/account");
        await owner.Send("main form");
        Assert.StartsWith("/payers/", owner.Path, StringComparison.Ordinal);
        return owner.Path;
    }

    /// <summary>Charges one line by hand.</summary>
    public static async Task Charges(this Visitor owner, string account, string what, string price, string tax = "")
    {
        await owner.Open(account + "/charge");
        await owner.Send("main form", ("Input.Lines[0].Text", what), ("Input.Lines[0].Price", price), ("Input.Lines[0].TaxPercent", tax));
        Assert.Equal(account, owner.Path);
    }

    /// <summary>So many days from today, as a date field sends it.</summary>
    public static string Day(int fromToday) => TimeProvider.System.GetUtcNow().AddDays(fromToday).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}

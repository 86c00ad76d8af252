using System.Net;

namespace CoachOffice.Web.Tests.Settings;

public sealed class BackupsTests : IDisposable
{
    private readonly OfficeHost _office = new();

    public void Dispose() => _office.Dispose();

    [Fact]
    public async Task An_owner_makes_a_backup_and_reads_what_came_of_it()
    {
        var owner = await _office.OpensThePractice();
        await owner.Open("/settings/backups");
        Assert.Contains("There is no backup yet", owner.Text, StringComparison.Ordinal);

        await owner.Send("main form");

        Assert.Contains("found good is less than an hour old", owner.Text, StringComparison.Ordinal);
        Assert.Equal(["found good"], owner.Page.QuerySelectorAll("tbody td:nth-child(3)").Select(c => c.TextContent));
        Assert.Single(Directory.GetDirectories(Path.Combine(_office.DataFolder, "backups"), "backup-*"));
        await owner.Open("/settings/history");
        Assert.Contains("backup made", owner.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Today_tells_an_owner_what_went_wrong_and_nobody_else()
    {
        var owner = await _office.OpensThePractice();
        var coach = await owner.LetsIn(_office, "coach");
        await File.WriteAllTextAsync(Path.Combine(_office.DataFolder, "backups"), "in the way", TestContext.Current.CancellationToken);
        await owner.Open("/settings/backups");
        await owner.Send("main form");
        Assert.Contains("could not be written", owner.Page.QuerySelector("tbody")!.TextContent, StringComparison.Ordinal);

        await owner.Open("/");
        Assert.Contains("could not be written", owner.Page.QuerySelector("section[aria-labelledby=backup]")!.TextContent, StringComparison.Ordinal);
        await coach.Open("/");
        Assert.Null(coach.Page.QuerySelector("section[aria-labelledby=backup]"));
        await coach.Open("/settings/backups");
        Assert.Equal(HttpStatusCode.Forbidden, coach.Status);
    }
}

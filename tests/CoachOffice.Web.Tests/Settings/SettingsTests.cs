using System.Net;

namespace CoachOffice.Web.Tests.Settings;

public sealed class SettingsTests : IAsyncLifetime
{
    private readonly OfficeHost _office = new();

    public ValueTask InitializeAsync() => ValueTask.CompletedTask;

    public ValueTask DisposeAsync()
    {
        _office.Dispose();
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task What_is_saved_comes_back_and_who_did_it_is_written_down()
    {
        var owner = await _office.OpensThePractice();
        await owner.Open("/settings");
        await owner.Send("main form", ("Input.EmergencyNumber", "999"), ("Input.PublicAddress", "https://lessons.example/"));
        Assert.Equal("999", owner.Page.QuerySelector("#Input_EmergencyNumber")!.GetAttribute("value"));
        Assert.Equal("https://lessons.example", owner.Page.QuerySelector("#Input_PublicAddress")!.GetAttribute("value"));

        await owner.Open("/settings/history");

        Assert.Contains("practice changed", owner.Text, StringComparison.Ordinal);
        Assert.Contains(Owner.Name, owner.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Two_owners_who_change_the_practice_see_both_values()
    {
        var one = await _office.OpensThePractice();
        var other = await one.LetsIn(_office, "owner");
        await one.Open("/settings");
        await other.Open("/settings");
        await one.Send("main form", ("Input.EmergencyNumber", "999"));

        await other.Send("main form", ("Input.EmergencyNumber", "911"));

        Assert.Equal(HttpStatusCode.Conflict, other.Status);
        Assert.Contains("saved is '999', yours is '911'", other.Alert, StringComparison.Ordinal);
        await other.Send("main form");
        Assert.Equal("911", other.Page.QuerySelector("#Input_EmergencyNumber")!.GetAttribute("value"));
    }

    [Fact]
    public async Task A_mail_server_named_in_the_practices_own_file_is_shown()
    {
        await File.WriteAllTextAsync(Path.Combine(_office.DataFolder, "office.json"), """{ "Office": { "Mail": { "Host": "mail.example.org" } } }""", TestContext.Current.CancellationToken);
        var owner = await _office.OpensThePractice();

        await owner.Open("/settings");

        Assert.Contains("Messages go out through mail.example.org.", owner.Text, StringComparison.Ordinal);
    }
}

namespace CoachOffice.Web.Tests.Regressions;

/// <summary>An office started on another port than the usual one put the usual one into every link it mailed.</summary>
public sealed class FirstAddressTests
{
    [Fact]
    public async Task Links_lead_to_where_the_owner_opened_the_office()
    {
        using var office = new OfficeHost();
        var owner = new Visitor(office);
        await owner.Open("http://localhost:5999/first-run");
        await owner.SendTo("http://localhost:5999/first-run", "form", Owner.FirstRun());

        await owner.Open("http://localhost:5999/settings");

        Assert.Equal("http://localhost:5999", owner.Page.QuerySelector("#Input_PublicAddress")!.GetAttribute("value"));
    }
}

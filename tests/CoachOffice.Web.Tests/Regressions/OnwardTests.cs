using System.Net;

namespace CoachOffice.Web.Tests.Regressions;

/// <summary>An address no header can carry made the sign-in fail after the right password.</summary>
public sealed class OnwardTests
{
    [Theory]
    [InlineData("/%C3%BC")]
    [InlineData("//thief.example")]
    public async Task Signing_in_leads_to_today_when_the_way_on_is_none_of_ours(string next)
    {
        using var office = new OfficeHost();
        await office.OpensThePractice();
        var person = new Visitor(office);
        await person.Open($"/sign-in?next={next}");

        await person.SendTo($"/sign-in?next={next}", "form", ("Input.Email", Owner.Email), ("Input.Password", Owner.Password));

        Assert.Equal((HttpStatusCode.OK, "/"), (person.Status, person.Path));
    }
}

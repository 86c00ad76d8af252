using System.Net;

namespace CoachOffice.Web.Tests.FollowUps;

public sealed class MorningListTests : IDisposable
{
    private readonly OfficeHost _office = new();

    public void Dispose() => _office.Dispose();

    [Fact]
    public async Task A_coach_asks_for_the_list_and_ends_it_and_the_desk_has_none()
    {
        var owner = await _office.OpensThePractice();
        await owner.Open("/account");
        await owner.Send("form[action*='Morning']");
        Assert.Contains("No more lists", owner.Text, StringComparison.Ordinal);
        await owner.Send("form[action*='Morning']");
        Assert.Contains("Send me the list", owner.Text, StringComparison.Ordinal);

        var desk = await owner.LetsIn(_office, "desk");
        await desk.Open("/account");
        Assert.Equal(HttpStatusCode.OK, desk.Status);
        Assert.Empty(desk.Page.QuerySelectorAll("form[action*='Morning']"));
    }
}

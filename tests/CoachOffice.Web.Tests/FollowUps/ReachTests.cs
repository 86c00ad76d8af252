using System.Net;

namespace CoachOffice.Web.Tests.FollowUps;

public sealed class ReachTests : IAsyncLifetime
{
    private readonly OfficeHost _office = new();
    private Visitor _coach = null!;
    private string _page = "";

    public async ValueTask InitializeAsync()
    {
        _coach = await _office.OpensThePractice();
        _page = $"{await _coach.Registers()}/messages";
    }

    public ValueTask DisposeAsync()
    {
        _office.Dispose();
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task A_stranger_is_sent_to_sign_in_and_the_desk_may_look()
    {
        var answer = await _office.Stranger().GetAsync(new Uri(_page, UriKind.Relative), TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.Found, answer.StatusCode);
        var desk = await _coach.LetsIn(_office, "desk");

        await desk.Open(_page);

        Assert.Equal("Messages to Ida Sommerfeld", desk.Heading);
        Assert.DoesNotContain("guardian", desk.Text, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task Nobody_is_nobody()
    {
        await _coach.Open("/students/00000000-0000-0000-0000-000000000001/messages");

        Assert.Equal(HttpStatusCode.NotFound, _coach.Status);
    }
}

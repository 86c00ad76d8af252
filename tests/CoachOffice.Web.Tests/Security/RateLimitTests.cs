using System.Net;

namespace CoachOffice.Web.Tests.Security;

public sealed class RateLimitTests : IDisposable
{
    private readonly OfficeHost _office = new();

    public void Dispose() => _office.Dispose();

    [Fact]
    public async Task Too_many_passwords_from_one_address_wait_a_minute_while_reading_goes_on()
    {
        _office.Settings["Office:RateLimits:SignIn"] = "3";
        await _office.OpensThePractice();
        for (var i = 0; i < 2; i++) await _office.SignsIn(password: "not the right one at all");

        var refused = await _office.SignsIn();

        Assert.Equal(HttpStatusCode.TooManyRequests, refused.Status);
        Assert.Equal("Too many tries", refused.Heading);
        Assert.Equal("60", Assert.Single(refused.Answer.Headers.GetValues("Retry-After")));
        await refused.Open("/sign-in");
        Assert.Equal(HttpStatusCode.OK, refused.Status);
    }

    [Fact]
    public async Task Pages_behind_a_link_to_lessons_are_counted_like_those_of_a_plan()
    {
        _office.Settings["Office:RateLimits:Links"] = "3";
        var stranger = new Visitor(_office);
        foreach (var path in new[] { "/my-lessons", "/my-lessons/book", "/v/short" })
        {
            await stranger.Open(path);
            Assert.Equal(HttpStatusCode.NotFound, stranger.Status);
        }

        await stranger.Open("/my-lessons/00000000-0000-0000-0000-000000000001/move");

        Assert.Equal(HttpStatusCode.TooManyRequests, stranger.Status);
    }
}

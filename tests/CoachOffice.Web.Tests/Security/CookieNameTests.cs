using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.Configuration;

namespace CoachOffice.Web.Tests.Security;

public sealed class CookieNameTests
{
    [Theory]
    [InlineData("urls", "https://0.0.0.0:443")]
    [InlineData("Office:TrustLocalProxy", "true")]
    public void Over_https_cookies_are_bound_to_the_host(string key, string value)
    {
        var names = new CookieNames(new ConfigurationBuilder().AddInMemoryCollection([new(key, value)]).Build());

        Assert.Equal("__Host-coachoffice", names.Of("coachoffice"));
        Assert.Equal(CookieSecurePolicy.Always, names.Secure);
    }

    [Fact]
    public void Over_plain_http_the_name_is_plain_because_browsers_refuse_the_prefix_there() =>
        Assert.Equal("coachoffice", new CookieNames(new ConfigurationBuilder().AddInMemoryCollection([new("urls", "http://localhost:5180")]).Build()).Of("coachoffice"));
}

using System.Net;
using System.Security.Cryptography;
using System.Text;
using CoachOffice.Data;
using CoachOffice.UseCases.FollowUps;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace CoachOffice.Web.Tests.FollowUps;

public sealed class BounceRouteTests : IDisposable
{
    private const string Secret = "a secret of the mail provider";
    private readonly OfficeHost _office = new();

    public void Dispose() => _office.Dispose();

    [Fact]
    public async Task Without_a_secret_there_is_no_such_door()
    {
        await _office.OpensThePractice();

        Assert.Equal(HttpStatusCode.NotFound, (await Post("{}", Secret)).StatusCode);
    }

    [Fact]
    public async Task A_signed_notice_is_taken_once_and_whatever_it_says_the_answer_is_the_same()
    {
        _office.Settings["Office:Mail:Bounces:Secret"] = Secret;
        var coach = await _office.OpensThePractice();
        await coach.Approves();
        var id = await Swept();
        var body = $$"""{"notices":[{"messageId":"<{{id}}>","recipient":"ida@example.org","status":"5.1.1"},{"messageId":"<nobody@nowhere.example>","recipient":"x@example.org","status":"5.1.1"}]}""";

        Assert.Equal([HttpStatusCode.Accepted, HttpStatusCode.Accepted], [(await Post(body, Secret)).StatusCode, (await Post(body, Secret)).StatusCode]);

        await using var scope = _office.Services.CreateAsyncScope();
        Assert.True((await scope.ServiceProvider.GetRequiredService<OfficeDb>().MailBounces.SingleAsync(TestContext.Current.CancellationToken)).IsHard);
    }

    [Theory]
    [InlineData("not the secret", "{\"notices\":[]}", HttpStatusCode.Unauthorized)]
    [InlineData(Secret, "{\"notices\":[]}", HttpStatusCode.BadRequest)]
    [InlineData(Secret, "[1,2", HttpStatusCode.BadRequest)]
    [InlineData(Secret, "{\"notices\":[null]}", HttpStatusCode.BadRequest)]
    [InlineData(Secret, "", HttpStatusCode.BadRequest)]
    public async Task What_is_not_signed_or_no_notice_is_refused(string secret, string body, HttpStatusCode status)
    {
        _office.Settings["Office:Mail:Bounces:Secret"] = Secret;
        await _office.OpensThePractice();

        Assert.Equal(status, (await Post(body, secret)).StatusCode);
    }

    [Fact]
    public async Task A_body_without_end_is_cut_off()
    {
        _office.Settings["Office:Mail:Bounces:Secret"] = Secret;
        await _office.OpensThePractice();

        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, (await Post(new string(' ', 70_000), Secret)).StatusCode);
    }

    private async Task<string> Swept()
    {
        await using var scope = _office.Services.CreateAsyncScope();
        await scope.ServiceProvider.GetRequiredService<SweepMessages>().Once(TestContext.Current.CancellationToken);
        var host = new Uri((await scope.ServiceProvider.GetRequiredService<OfficeDb>().Practices.SingleAsync(TestContext.Current.CancellationToken)).PublicAddress).Host;
        var message = await scope.ServiceProvider.GetRequiredService<OfficeDb>().Messages.SingleAsync(m => m.SentAt != null, TestContext.Current.CancellationToken);
        return $"{message.StableName}@{host}";
    }

    private Task<HttpResponseMessage> Post(string body, string secret)
    {
        var bytes = Encoding.UTF8.GetBytes(body);
        var content = new ByteArrayContent(bytes);
        content.Headers.ContentType = new("application/json");
        content.Headers.Add("X-CoachOffice-Signature", $"sha256={Convert.ToHexStringLower(HMACSHA256.HashData(Encoding.UTF8.GetBytes(secret), bytes))}");
        return _office.Stranger().PostAsync(new Uri("/mail/bounces", UriKind.Relative), content, TestContext.Current.CancellationToken);
    }
}

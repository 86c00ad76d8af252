using System.Net;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using Microsoft.Extensions.DependencyInjection;

namespace CoachOffice.Web.Tests.Bookings;

public sealed class VisitDoorTests : IAsyncLifetime
{
    private readonly OfficeHost _office = new();
    private Visitor _owner = null!;
    private Visitor _student = null!;
    private StudentId _id;

    public async ValueTask InitializeAsync()
    {
        _owner = await _office.OpensThePractice();
        _id = StudentId.From(Guid.Parse((await _owner.Registers()).Split('/')[^1]));
        _student = new Visitor(_office);
    }

    public ValueTask DisposeAsync()
    {
        _office.Dispose();
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task The_link_is_exchanged_for_a_limited_cookie_and_a_clean_address()
    {
        await _student.Open(await Link());

        Assert.Equal("/my-lessons", _student.Way[0].Headers.Location!.ToString());
        var cookie = Assert.Single(_student.Way[0].Headers.GetValues("Set-Cookie"), c => c.StartsWith("coachoffice-visits=", StringComparison.Ordinal));
        Assert.Contains("httponly", cookie, StringComparison.OrdinalIgnoreCase);
        await _student.Open("/my-plan");
        Assert.Equal(HttpStatusCode.NotFound, _student.Status);
        await _student.Open("/students");
        Assert.Equal("/sign-in", _student.Path);
    }

    [Theory]
    [InlineData("/v/AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA")]
    [InlineData("/v/short")]
    public async Task What_opens_nothing_says_so_kindly(string path)
    {
        await _student.Open(path);

        Assert.Equal(HttpStatusCode.NotFound, _student.Status);
        Assert.Equal("This link does not open anything now", _student.Heading);
    }

    private async Task<string> Link()
    {
        await using var scope = _office.Services.CreateAsyncScope();
        var desk = new Actor(null, "The desk", Policy.Desk);
        return (await scope.ServiceProvider.GetRequiredService<IssueVisitLink>().For(_id, desk)).Value.AbsolutePath;
    }
}

using System.Net;
using System.Text;
using AngleSharp.Dom;
using CoachOffice.Data;
using CoachOffice.Domain.Bookings;
using CoachOffice.Web.Tests.Bookings;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using NodaTime;

namespace CoachOffice.Web.Tests.Lessons;

public sealed class RemoteReviewPagesTests : IAsyncLifetime
{
    private static readonly byte[] Clip = [0, 0, 0, 24, .. "ftypisom"u8, 0, 0, 2, 0, .. "isommp41"u8, .. new byte[200]];
    private readonly OfficeHost _office = new();
    private Visitor _owner = null!;
    private Visitor _student = null!;

    public async ValueTask InitializeAsync()
    {
        _owner = await _office.OpensThePractice();
        await using var scope = _office.Services.CreateAsyncScope();
        var db = scope.ServiceProvider.GetRequiredService<OfficeDb>();
        var coach = (await db.Users.SingleAsync()).AccountId;
        db.Add(Offering.Of(OfferingId.From(Guid.Parse("30000000-0000-0000-0000-000000000009")), new OfferingDetails { Name = "Clips answered", Kind = OfferingKind.RemoteReview, PriceMinor = 3000, TurnaroundHours = 48, Coaches = [coach] }, Instant.FromUtc(2026, 1, 1, 0, 0)));
        await db.SaveChangesAsync();
        _student = await Student("Ann", "ann@example.org");
    }

    public ValueTask DisposeAsync()
    {
        _office.Dispose();
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task Clips_go_from_the_students_page_over_the_queue_into_a_lesson_beside_its_sheet()
    {
        await Sends(Clip);
        Assert.Contains("answer promised by", _student.Text, StringComparison.Ordinal);
        Assert.Contains("Australia/Sydney", _student.Text, StringComparison.Ordinal);

        await _owner.Open("/");
        Assert.Contains("Ann", _owner.Page.QuerySelector("[aria-labelledby=reviews]")!.TextContent, StringComparison.Ordinal);
        await _owner.Open("/reviews");
        await _owner.Send("form[action*='handler=open']");

        Assert.StartsWith("/lessons/", _owner.Path, StringComparison.Ordinal);
        Assert.Contains("thin to the right", _owner.Page.QuerySelector(".beside")!.TextContent, StringComparison.Ordinal);
        await _owner.Open(_owner.Page.QuerySelector(".beside video")!.GetAttribute("src")!);
        Assert.Equal(HttpStatusCode.OK, _owner.Status);
    }

    [Fact]
    public async Task What_is_no_clip_is_said_and_the_words_typed_stay()
    {
        await Sends(Encoding.ASCII.GetBytes("not a clip, whatever it is called"));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, _student.Status);
        Assert.Contains("A clip is an MP4, MOV or WebM video", _student.Alert, StringComparison.Ordinal);
        Assert.Contains("thin to the right", _student.Page.QuerySelector("#BallFlight")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Another_student_sees_nothing_of_it_and_neither_desk_nor_stranger_opens_the_queue()
    {
        await Sends(Clip);
        var other = await Student("Bob", "bob@example.org");
        await other.Open("/my-lessons/review");
        Assert.DoesNotContain("promised by", other.Text, StringComparison.Ordinal);

        var desk = await _owner.LetsIn(_office, "desk");
        await desk.Open("/reviews");
        Assert.Equal(HttpStatusCode.Forbidden, desk.Status);
        var stranger = new Visitor(_office);
        await stranger.Open("/reviews");
        Assert.Equal("/sign-in", stranger.Path);
        await stranger.Open("/my-lessons/review");
        Assert.Equal(HttpStatusCode.NotFound, stranger.Status);
    }

    private async Task Sends(byte[] bytes)
    {
        await _student.Open("/my-lessons/review");
        await _student.SendFile("form:has(#Clips)", ("clips", "swing.mp4", bytes), ("Club", "driver"), ("BallFlight", "thin to the right"), ("Zone", "Australia/Sydney"));
    }

    private async Task<Visitor> Student(string name, string mail)
    {
        await _owner.Open("/students/new");
        await _owner.Send("main form", ("Input.GivenName", name), ("Input.FamilyName", "Li"), ("Input.Email", mail), ("Input.BirthDate", "1988-06-14"));
        return await _owner.HandsOutLessons(_office, _owner.Path);
    }
}

using CoachOffice.Data;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases;
using Microsoft.Extensions.DependencyInjection;

namespace CoachOffice.Web.Tests.Today;

public sealed class TodayTests : IAsyncLifetime
{
    private readonly OfficeHost _office = new();
    private Visitor _owner = null!;

    public async ValueTask InitializeAsync() => _owner = await _office.OpensThePractice();

    public ValueTask DisposeAsync()
    {
        _office.Dispose();
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task With_nothing_to_do_the_day_says_so_and_where_to_begin()
    {
        await _owner.Open("/");

        Assert.Equal("Today", _owner.Heading);
        Assert.Equal("Nothing waits for you", _owner.Page.QuerySelector(".empty h2")!.TextContent);
        Assert.Empty(_owner.Page.QuerySelectorAll("section"));
    }

    [Fact]
    public async Task A_lesson_of_the_day_opens_in_one_tap()
    {
        await _owner.Open("/students/new");
        await _owner.Send("main form", ("Input.GivenName", "Ada"));
        var student = StudentId.From(Guid.Parse(_owner.Path.Split('/')[^1]));
        var lesson = await Record(student);

        await _owner.Open("/");

        var link = Assert.Single(_owner.Page.QuerySelectorAll("section[aria-labelledby=lessons] a"));
        Assert.Equal("Ada", link.TextContent);
        Assert.Equal($"/lessons/{lesson.Value}", link.GetAttribute("href"));
    }

    [Fact]
    public async Task A_long_list_shows_its_top_and_the_rest_in_one_tap()
    {
        await _owner.Open("/students/new");
        await _owner.Send("main form", ("Input.GivenName", "Ada"));
        var student = StudentId.From(Guid.Parse(_owner.Path.Split('/')[^1]));
        for (var i = 0; i < 12; i++) await Record(student);

        await _owner.Open("/");
        Assert.Equal(10, _owner.Page.QuerySelectorAll("section[aria-labelledby=lessons] li").Length);
        await _owner.Open(_owner.Page.QuerySelector("section[aria-labelledby=lessons] p a")!.GetAttribute("href")!);

        Assert.Equal(12, _owner.Page.QuerySelectorAll("section[aria-labelledby=lessons] li").Length);
        Assert.Empty(_owner.Page.QuerySelectorAll("section[aria-labelledby=lessons] p a"));
    }

    [Fact]
    public async Task Every_link_of_the_day_opens_for_the_desk_too()
    {
        await _owner.Open("/students/new");
        await _owner.Send("main form", ("Input.GivenName", "Ada"));
        await Record(StudentId.From(Guid.Parse(_owner.Path.Split('/')[^1])));
        var desk = await _owner.LetsIn(_office, "desk");
        var links = desk.Page.QuerySelectorAll("main a, .main-nav a").Select(a => a.GetAttribute("href")!).ToList();
        Assert.Contains(links, l => l.StartsWith("/students/", StringComparison.Ordinal));

        foreach (var link in links)
        {
            await desk.Open(link);
            Assert.True(desk.Answer.IsSuccessStatusCode, $"{link}: {desk.Status}");
        }
    }

    private async Task<LessonId> Record(StudentId student)
    {
        await using var scope = _office.Services.CreateAsyncScope();
        var db = scope.ServiceProvider.GetRequiredService<OfficeDb>();
        var clock = scope.ServiceProvider.GetRequiredService<PracticeClock>();
        var start = scope.ServiceProvider.GetRequiredService<CoachOffice.UseCases.Lessons.StartLesson>();
        var account = db.Users.Single();
        var heading = new LessonHeading(await clock.Today(TestContext.Current.CancellationToken), Club.Iron);
        return (await start.For(student, heading, account.AsActor())).Value;
    }
}

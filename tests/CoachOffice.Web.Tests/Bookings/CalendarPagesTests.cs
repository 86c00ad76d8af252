using System.Net;
using System.Text;
using AngleSharp.Dom;

namespace CoachOffice.Web.Tests.Bookings;

/// <summary>Calendar addresses, busy times and links to the lessons, without a line of script.</summary>
public sealed class CalendarPagesTests : IAsyncLifetime
{
    private const string Head = "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//T//T//EN\r\n";
    private readonly OfficeHost _office = new();
    private Visitor _owner = null!;
    private Visitor _program = null!;

    public async ValueTask InitializeAsync()
    {
        _office.Settings["Office:RateLimits:Uploads"] = "1000";
        _owner = await _office.OpensThePractice();
        _program = new Visitor(_office);
    }

    public ValueTask DisposeAsync()
    {
        _office.Dispose();
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task An_address_is_shown_once_followed_without_a_password_and_ended()
    {
        await _owner.Open("/calendar/feed");
        await _owner.Send("form[action*='Make']");
        var address = new Uri(_owner.Page.QuerySelector("#address")!.GetAttribute("value")!).AbsolutePath;
        await _owner.Open("/calendar/feed");
        Assert.Null(_owner.Page.QuerySelector("#address"));
        Assert.Contains("No program has looked yet", _owner.Text, StringComparison.Ordinal);

        await _program.Open(address);

        Assert.Equal((HttpStatusCode.OK, "text/calendar", "utf-8"), (_program.Status, _program.Answer.Content.Headers.ContentType!.MediaType, _program.Answer.Content.Headers.ContentType!.CharSet));
        Assert.StartsWith("BEGIN:VCALENDAR\r\n", await _program.Answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
        var tag = _program.Answer.Headers.ETag!;
        await _program.Open(address, tag);
        Assert.Equal(HttpStatusCode.NotModified, _program.Status);
        await _owner.Open("/calendar/feed");
        Assert.Contains("A program last looked", _owner.Text, StringComparison.Ordinal);
        await _owner.Send("form[action*='End']");
        await _program.Open(address);
        Assert.Equal(HttpStatusCode.NotFound, _program.Status);
    }

    [Theory]
    [InlineData("/calendar/AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA.ics")]
    [InlineData("/calendar/x.ics")]
    [InlineData("/calendar/feed.ics")]
    public async Task Anything_else_is_not_found(string path)
    {
        await _program.Open(path);

        Assert.Equal(HttpStatusCode.NotFound, _program.Status);
    }

    [Fact]
    public async Task A_calendar_file_is_looked_at_kept_and_removed()
    {
        await _owner.Open("/calendar/busy");
        await Brings(Event("a", "DTSTART:20990601T090000Z") + Event("b", $"DTSTART:{TimeProvider.System.GetUtcNow().AddDays(9):yyyyMMdd}T090000Z") + Event("c", $"DTSTART:{TimeProvider.System.GetUtcNow().AddDays(8):yyyyMMdd}T090000Z\r\nTRANSP:TRANSPARENT"));

        Assert.Contains("1 busy time from 1 event", _owner.Text, StringComparison.Ordinal);
        Assert.Contains("1 event marked as free in that calendar", _owner.Text, StringComparison.Ordinal);
        Assert.Contains("None yet", _owner.Text, StringComparison.Ordinal);
        await _owner.Send("form[action*='Keep']");
        Assert.Equal("Home", _owner.Page.QuerySelector(".rows .what")!.TextContent);
        await _owner.Send("form[action*='Remove']");
        Assert.Contains("None yet", _owner.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_no_calendar_is_refused_and_a_forged_parcel_too()
    {
        await _owner.Open("/calendar/busy");
        await _owner.SendFile("form[enctype]", ("File", "my.ics", "hello"u8.ToArray()), ("Name", "Home"));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, _owner.Status);
        Assert.Contains("This is no calendar file", _owner.Alert, StringComparison.Ordinal);
        await Brings(Event("b", $"DTSTART:{TimeProvider.System.GetUtcNow().AddDays(9):yyyyMMdd}T090000Z"));

        await _owner.Send("form[action*='Keep']", ("Parcel", "x" + _owner.Page.QuerySelector("[name=Parcel]")!.GetAttribute("value")));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, _owner.Status);
        Assert.Contains("Pick it once more", _owner.Alert, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_file_that_is_too_large_is_refused()
    {
        await _owner.Open("/calendar/busy");

        await Brings(new string('x', 2 * 1024 * 1024));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, _owner.Status);
        Assert.Contains("at most 2 MB", _owner.Alert, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/calendar/feed")]
    [InlineData("/calendar/busy")]
    public async Task The_desk_has_no_calendar_of_its_own(string page)
    {
        var desk = await _owner.LetsIn(_office, "desk");

        await desk.Open(page);

        Assert.Equal(HttpStatusCode.Forbidden, desk.Status);
    }

    [Fact]
    public async Task The_desk_hands_out_a_link_to_the_lessons_and_ends_it_and_the_student_makes_a_calendar_address()
    {
        var page = $"{await _owner.Registers()}/lessons-link";
        var desk = await _owner.LetsIn(_office, "desk");
        await desk.Open(page);
        await desk.Send("form[action*='Make']");
        await _program.Open(new Uri(desk.Page.QuerySelector("#address")!.GetAttribute("value")!).AbsolutePath);
        await _program.Open("/my-lessons/calendar");
        await _program.Send("form[action*='Make']");
        var address = new Uri(_program.Page.QuerySelector("#address")!.GetAttribute("value")!).AbsolutePath;
        var other = new Visitor(_office);
        await other.Open(address);
        Assert.Equal(HttpStatusCode.OK, other.Status);

        await desk.Open(page);
        await desk.Send("form[action*='End']");

        Assert.Contains("One link has ended", desk.Page.Body!.TextContent, StringComparison.Ordinal);
        await _program.Open("/my-lessons/calendar");
        Assert.Equal((HttpStatusCode.NotFound, "This link does not open anything now"), (_program.Status, _program.Heading));
        await other.Open(address);
        Assert.Equal(HttpStatusCode.NotFound, other.Status);
    }

    private static string Event(string uid, string lines) => $"BEGIN:VEVENT\r\nUID:{uid}\r\n{lines}\r\nDURATION:PT1H\r\nEND:VEVENT\r\n";

    private Task Brings(string events) => _owner.SendFile("form[enctype]", ("File", "home.ics", Encoding.UTF8.GetBytes($"{Head}{events}END:VCALENDAR\r\n")), ("Name", "Home"));
}

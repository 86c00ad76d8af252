using System.Net;
using System.Text;

namespace CoachOffice.Web.Tests.Students.Imports;

/// <summary>From a list to students, without a line of script.</summary>
public sealed class StudentListPagesTests : IAsyncLifetime
{
    private const string Text = "Name;Email;Notes\nBerg, Anna;anna@example.org;<b>=1+1</b>\nBroken, Bo;nowhere;x\n";

    private readonly OfficeHost _office = new();
    private Visitor _owner = null!;

    public async ValueTask InitializeAsync()
    {
        _office.Settings["Office:RateLimits:Uploads"] = "1000";
        _owner = await _office.OpensThePractice();
    }

    public ValueTask DisposeAsync()
    {
        _office.Dispose();
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task A_list_is_told_looked_at_brought_in_and_taken_back()
    {
        await Brings(_owner, Text);
        Assert.EndsWith("/columns", _owner.Path, StringComparison.Ordinal);
        Assert.Contains("<b>=1+1</b>", _owner.Text, StringComparison.Ordinal);
        await _owner.Send("main form");
        Assert.Equal("Who would be brought in", _owner.Heading);
        var file = _owner.Path;
        Assert.Contains("'nowhere' is no mail address", _owner.Text, StringComparison.Ordinal);
        Assert.Null(_owner.Page.QuerySelector("main b"));
        await _owner.Open($"{file}?fate=refused");
        Assert.Equal(["3"], _owner.Page.QuerySelectorAll(".listed th[scope=row]").Select(r => r.TextContent));

        await _owner.Open(file);
        await _owner.Send("form[action*='Refused']");
        Assert.Equal("text/csv; charset=utf-8; header=present", _owner.Answer.Content.Headers.ContentType!.ToString());
        Assert.Equal("attachment", _owner.Answer.Content.Headers.ContentDisposition!.DispositionType);
        await _owner.Open(file);
        await _owner.Send("form[action*='Bring']");
        Assert.Equal("Brought in", _owner.Heading);
        Assert.Equal(["Anna Berg"], _owner.Page.QuerySelectorAll(".rows .what").Select(r => r.TextContent));

        await _owner.Send("form[action*='Undo']");
        Assert.Equal("Taken back", _owner.Heading);
        await _owner.Open("/students");
        Assert.Contains("No students yet", _owner.Text, StringComparison.Ordinal);
        await _owner.Open("/students/bring");
        Assert.Contains("taken back", _owner.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_open_is_asked_and_what_cannot_be_read_is_told()
    {
        await Brings(_owner, "Given name,Birth date\nAnna,03/04/1984\n");
        await _owner.Send("main form");
        Assert.Equal(HttpStatusCode.UnprocessableEntity, _owner.Status);
        Assert.Contains("can be read two ways", _owner.Alert, StringComparison.Ordinal);
        await _owner.Send("main form", ("day-order", "day-first"));
        Assert.Contains("born 1984-04-03", _owner.Text, StringComparison.Ordinal);

        await _owner.Open("/students/bring");
        await _owner.SendFile("main form", ("file", "students.csv", [0x50, 0x4b, 3, 4, 0, 0]));
        Assert.Contains("This is no text file", _owner.Alert, StringComparison.Ordinal);
        await _owner.Open("/students/bring");
        await _owner.SendFile("main form", ("file", "students.csv", new byte[5 * 1024 * 1024 + 1]));
        Assert.Contains("larger than 5 MB", _owner.Alert, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_open_list_is_nobody_elses_on_any_address_and_a_stranger_brings_none()
    {
        await Brings(_owner, Text);
        var columns = _owner.Path;
        await _owner.Send("main form");
        var file = _owner.Path;
        var desk = await _owner.LetsIn(_office, "desk");
        foreach (var address in new[] { file, columns })
        {
            await desk.Open(address);
            Assert.Equal(HttpStatusCode.NotFound, desk.Status);
        }

        foreach (var handler in new[] { "Bring", "Refused", "Drop", "Undo" })
        {
            await desk.Open("/students/bring");
            await desk.SendTo($"{file}?handler={handler}", "main form");
            Assert.Equal(HttpStatusCode.NotFound, desk.Status);
        }

        var stranger = new Visitor(_office);
        foreach (var address in new[] { "/students/bring", file, columns, "/students/export" })
        {
            await stranger.Open(address);
            Assert.Equal("/sign-in", stranger.Path);
        }
    }

    [Fact]
    public async Task An_owner_takes_all_students_out_and_nobody_else_sees_the_way()
    {
        await _owner.Registers();
        await _owner.Open("/students");
        Assert.NotNull(_owner.Page.QuerySelector("a[href='/students/export']"));
        await _owner.Open("/students/export");
        await _owner.Send("main form");

        var text = Encoding.UTF8.GetString(await _owner.Answer.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken));
        Assert.Contains("\r\nIda,Sommerfeld,Ida@example.org,", text, StringComparison.Ordinal);
        var coach = await _owner.LetsIn(_office, "coach");
        await coach.Open("/students");
        Assert.Null(coach.Page.QuerySelector("a[href='/students/export']"));
        await coach.Open("/students/export");
        Assert.Equal(HttpStatusCode.Forbidden, coach.Status);
    }

    private static async Task Brings(Visitor person, string text)
    {
        await person.Open("/students/bring");
        await person.SendFile("main form", ("file", "students.csv", Encoding.UTF8.GetBytes(text)));
    }
}

using System.Net;
using System.Text;

namespace CoachOffice.Web.Tests.Lessons.Imports;

/// <summary>From a file to lessons, without a line of script.</summary>
public sealed class ImportPageTests : IAsyncLifetime
{
    private const string Head = "Date,Club,Club speed,Ball speed [mph],Attack angle [deg],Club path [deg],Face to path [deg]\n";
    private const string Swing = "2026-02-20,Driver,98.4,145.2,2.1,-1.5,1.2\n";
    private readonly OfficeHost _office = new();
    private Visitor _coach = null!;
    private string _student = "";

    private string Address => $"{_student}/radar";

    public async ValueTask InitializeAsync()
    {
        _office.Settings["Office:RateLimits:Uploads"] = "1000";
        _coach = await _office.OpensThePractice();
        _student = await _coach.Registers();
    }

    public ValueTask DisposeAsync()
    {
        _office.Dispose();
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task A_file_is_told_once_looked_at_and_kept()
    {
        await Brings(_coach, Head + Swing + "2026-02-20,Driver,172,240,2,1,1\n");
        Assert.EndsWith("/columns", _coach.Path, StringComparison.Ordinal);
        Assert.Contains("open for a right-handed student", _coach.Text, StringComparison.Ordinal);
        await _coach.Send("main form");
        Assert.Equal(HttpStatusCode.UnprocessableEntity, _coach.Status);
        Assert.Contains("the file does not say in which unit 'Club speed' is", _coach.Alert, StringComparison.Ordinal);
        await Tells(_coach);

        Assert.Contains("1, with 5 numbers", _coach.Text, StringComparison.Ordinal);
        Assert.Contains("1.2° open", _coach.Text, StringComparison.Ordinal);
        Assert.Contains("8 to 70 m/s", _coach.Page.QuerySelector("section[aria-labelledby=refused]")!.TextContent, StringComparison.Ordinal);
        var file = _coach.Path;
        await _coach.Send("main form");
        await Ends(file);

        Assert.Equal("What was kept", _coach.Heading);
        await _coach.Open(_coach.Page.QuerySelector(".rows a")!.GetAttribute("href")!);
        Assert.Equal("43.99", _coach.Page.QuerySelector("[name='readings[club-speed]']")!.GetAttribute("value"));
        await _coach.Open(Address);
        Assert.Contains($"1 swing, imported", _coach.Text, StringComparison.Ordinal);
        Assert.Contains(Owner.Name, _coach.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_next_file_with_the_same_columns_is_shown_at_once_and_the_same_file_is_refused()
    {
        await Brings(_coach, Head + Swing);
        await Tells(_coach);
        var file = _coach.Path;
        await _coach.Send("main form");
        await Ends(file);

        await Brings(_coach, Head + Swing);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, _coach.Status);
        Assert.Contains($"{Owner.Name} imported this very file on", _coach.Alert, StringComparison.Ordinal);

        await Brings(_coach, Head + Swing.Replace("-20", "-21", StringComparison.Ordinal));
        Assert.Equal("What would be kept", _coach.Heading);
    }

    [Fact]
    public async Task A_lesson_that_is_there_is_offered_first()
    {
        await _coach.Open($"{_student}/lessons/new");
        await _coach.Send("main form", ("HeldOn", "2026-02-20"), ("Club", "driver"));
        var lesson = _coach.Path;
        await Brings(_coach, Head + Swing);
        await Tells(_coach);
        var file = _coach.Path;

        await _coach.Send("main form");
        await Ends(file);

        Assert.Contains("added to the lesson that was there", _coach.Text, StringComparison.Ordinal);
        Assert.Equal(lesson, _coach.Page.QuerySelector(".rows a")!.GetAttribute("href"));
    }

    [Fact]
    public async Task Formulas_and_markup_in_cells_come_out_as_text()
    {
        await Brings(_coach, Head + Swing + "2026-02-20,<b>=HYPERLINK(1)</b>,98,140,1,1,1\n2026-02-20,Driver,=1+1,<i>140</i>,1,1,1\n");
        Assert.Null(_coach.Page.QuerySelector("main b, main i"));
        Assert.Contains(_coach.Page.QuerySelectorAll("label"), l => l.TextContent == "<b>=HYPERLINK(1)</b>");
        await Tells(_coach, ("club[1][1]", "iron"));

        Assert.Null(_coach.Page.QuerySelector("main b, main i"));
        Assert.Contains("'=1+1' is no number", _coach.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_file_is_dropped_and_gone()
    {
        await Brings(_coach, Head + Swing);
        await Tells(_coach);
        var file = _coach.Path;

        await _coach.Send("form[action*='Drop']");

        Assert.Contains("dropped", _coach.Page.Body!.TextContent, StringComparison.Ordinal);
        await _coach.Open(file);
        Assert.Equal(HttpStatusCode.NotFound, _coach.Status);
        Assert.Empty(Directory.GetFiles(Path.Combine(_office.DataFolder, "device-files")));
    }

    [Fact]
    public async Task An_open_file_is_nobody_elses_on_any_address()
    {
        var other = await _coach.LetsIn(_office, "coach");
        await Brings(_coach, Head + Swing);
        var columns = _coach.Path;
        await Tells(_coach);
        var file = _coach.Path;
        await other.Open(Address);
        Assert.DoesNotContain("swings.csv", other.Text, StringComparison.Ordinal);

        foreach (var address in new[] { file, columns })
        {
            await other.Open(address);
            Assert.Equal(HttpStatusCode.NotFound, other.Status);
        }

        foreach (var (address, form) in new[] { (file, "form"), ($"{file}?handler=Stop", "form"), ($"{file}?handler=Drop", "form"), (columns, "form") })
        {
            await other.Open(Address);
            await other.SendTo(address, form);
            Assert.Equal(HttpStatusCode.NotFound, other.Status);
        }

        await _coach.Open(file);
        Assert.Equal(HttpStatusCode.OK, _coach.Status);
    }

    [Fact]
    public async Task The_desk_brings_nothing_and_sees_no_way_to_it()
    {
        var desk = await _coach.LetsIn(_office, "desk");
        await desk.Open(_student);
        Assert.DoesNotContain("radar", desk.Text, StringComparison.OrdinalIgnoreCase);
        await desk.Open(Address);
        Assert.Equal(HttpStatusCode.Forbidden, desk.Status);
    }

    [Fact]
    public async Task Too_large_a_file_is_told_and_not_kept()
    {
        await _coach.Open(Address);
        await _coach.SendFile("main form", ("file", "swings.csv", new byte[10 * 1024 * 1024 + 1]));

        Assert.Contains("larger than 10 MB", _coach.Alert, StringComparison.Ordinal);
    }

    private async Task Brings(Visitor coach, string text)
    {
        await coach.Open(Address);
        await coach.SendFile("main form", ("file", "swings.csv", Encoding.UTF8.GetBytes(text)));
    }

    private static async Task Tells(Visitor coach, params (string, string?)[] more)
    {
        await coach.Send("main form", [("unit[2]", "mph"), ("plus[4]", "ours"), ("plus[5]", "right"), ("plus[6]", "ours"), .. more]);
        Assert.Equal("What would be kept", coach.Heading);
    }

    private async Task Ends(string file)
    {
        while (_coach.Answer.Headers.Contains("Refresh"))
        {
            Assert.NotNull(_coach.Page.QuerySelector("progress"));
            Assert.NotNull(_coach.Page.QuerySelector("form[action*='Stop']"));
            await _coach.Open(file);
        }
    }
}

using System.Globalization;
using System.Net;
using AngleSharp.Dom;
using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Measuring.Landmarks;
using CoachOffice.SeedDemo.Builders;

namespace CoachOffice.Web.Tests.Media;

/// <summary>Points on a still without any script: the number fields are the form.</summary>
public sealed class StillPageTests : IAsyncLifetime
{
    private readonly OfficeHost _office = new();
    private readonly DrawnStill _drawn = new(AStickFigure.At(View.FaceOn, Moment.Impact));
    private Visitor _coach = null!;
    private string _lesson = "";

    public async ValueTask InitializeAsync()
    {
        _coach = await _office.OpensThePractice();
        _lesson = await _coach.StartsALesson();
        await _coach.Open(_lesson + "/stills");
        await _coach.SendFile("#add-still", ("File", "impact.png", _drawn.Png()), ("Shows", "face-on/impact"), ("Swing", "2"));
        Assert.Equal(HttpStatusCode.OK, _coach.Status);
    }

    public ValueTask DisposeAsync()
    {
        _office.Dispose();
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task Numbers_in_fields_become_points_on_the_picture_and_values_with_their_errors()
    {
        Assert.All(_coach.Page.QuerySelectorAll(".mark"), m => Assert.Equal("hidden", m.GetAttribute("visibility")));
        Assert.Contains("needs plumb line; middle of the belt", _coach.Text, StringComparison.Ordinal);
        Assert.Contains("a still at address from this view", _coach.Text, StringComparison.Ordinal);

        await _coach.Send("#marks", Typed());

        Assert.Contains("The marks are kept", _coach.Page.QuerySelector(".notice")!.TextContent, StringComparison.Ordinal);
        Assert.All(_coach.Page.QuerySelectorAll(".mark"), m => Assert.Null(m.GetAttribute("visibility")));
        Assert.Equal("24°", Row("impact-spine-tilt").QuerySelector("strong")!.TextContent);
        Assert.Equal(["1.2°", "3.1°"], Row("impact-spine-tilt").QuerySelectorAll("td.number").Skip(1).Select(c => c.TextContent));
        Assert.Contains("needs a still at address", Row("downswing-pelvis-shift").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Ticked_values_go_into_the_sheet_for_the_swing_of_the_still()
    {
        await _coach.SendTo($"{_coach.Path}?handler=put", "#marks", [.. Typed(), ("Put", "impact-spine-tilt"), ("Put", "impact-shaft-lean")]);

        Assert.Equal(_lesson, _coach.Path);
        Assert.Contains("2 values from the still", _coach.Page.QuerySelector(".notice")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("24", _coach.Page.QuerySelector("#grade-impact-spine-tilt")!.ParentElement!.InnerHtml, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Values_are_told_while_one_marks_and_nothing_is_saved()
    {
        var page = _coach.Path;
        await _coach.SendTo($"{page}?handler=measure", "#marks", Typed());
        Assert.Equal("24°", Row("impact-spine-tilt").QuerySelector("strong")!.TextContent);

        await _coach.Open(page);
        await _coach.SendTo($"{page}?handler=measure", "#marks", ("x[ball]", "9999"), ("y[ball]", "5"));
        Assert.Contains("outside the picture", _coach.Page.Body!.TextContent, StringComparison.Ordinal);

        await _coach.Open(page);
        Assert.Null(Row("impact-spine-tilt").QuerySelector("strong"));
    }

    [Fact]
    public async Task A_refused_save_says_every_reason_and_loses_nothing()
    {
        await _coach.Send("#marks", ("x[ball]", "12"), ("x[neck-base]", "NaN"), ("y[neck-base]", "7"), ("KnownLengthCm", "long"), ("OffSquareDegrees", ""));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, _coach.Status);
        Assert.Equal(4, _coach.Page.QuerySelectorAll("[role=alert] li").Length);
        Assert.Equal(["12", "NaN", "long"], new[] { "x[ball]", "x[neck-base]", "KnownLengthCm" }.Select(n => _coach.Page.QuerySelector($"[name='{n}']")!.GetAttribute("value")));
    }

    [Fact]
    public async Task The_second_of_two_who_mark_sees_both_places_and_may_save_over()
    {
        var other = await _office.SignsIn();
        await other.Open(_coach.Path);
        await _coach.Send("#marks", Typed());

        await other.Send("#marks", [.. Typed().Where(f => f.Name is not "x[ball]"), ("x[ball]", "300")]);

        Assert.Equal(HttpStatusCode.Conflict, other.Status);
        Assert.Contains("yours is '300", other.Alert, StringComparison.Ordinal);
        await other.Send("#marks");
        Assert.Equal(HttpStatusCode.OK, other.Status);
        Assert.Equal("300", other.Page.QuerySelector("[name='x[ball]']")!.GetAttribute("value"));
    }

    [Fact]
    public async Task The_desk_opens_no_still_and_another_lessons_still_is_not_found()
    {
        var desk = await _coach.LetsIn(_office, "desk");
        await _coach.Open(_lesson + "/stills");
        var still = _coach.Page.QuerySelector(".stills a")!.GetAttribute("href")!;
        await desk.Open(still);
        Assert.Equal(HttpStatusCode.Forbidden, desk.Status);

        var another = await _coach.StartsALesson();
        await _coach.Open($"{another}/stills/{still.Split('/')[^1]}");
        Assert.Equal(HttpStatusCode.NotFound, _coach.Status);
    }

    [Fact]
    public void Neither_style_nor_script_stands_in_the_page_and_every_field_has_a_name()
    {
        Assert.Empty(_coach.Page.QuerySelectorAll("main [style], main script, main [onclick]"));
        Assert.All(_coach.Page.QuerySelectorAll(".points input"), f => Assert.NotEmpty(f.GetAttribute("aria-label")!));
        Assert.Contains("never the difference of the two", _coach.Text, StringComparison.Ordinal);
    }

    private IElement Row(string measure) => _coach.Page.QuerySelector($"[data-value-of='{measure}']")!;

    private (string Name, string? Value)[] Typed() =>
    [
        ("KnownLengthCm", "100"),
        .. _drawn.Figure.Points.Keys.Select(l => ($"x[{Terms.Of(l)}]", (string?)Text(_drawn.At(l).X))),
        .. _drawn.Figure.Points.Keys.Select(l => ($"y[{Terms.Of(l)}]", (string?)Text(_drawn.At(l).Y))),
    ];

    private static string Text(double number) => number.ToString("0.##", CultureInfo.InvariantCulture);
}

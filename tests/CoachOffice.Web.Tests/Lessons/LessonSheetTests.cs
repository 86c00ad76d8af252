using System.Net;
using AngleSharp.Dom;

namespace CoachOffice.Web.Tests.Lessons;

public sealed class LessonSheetTests : IAsyncLifetime
{
    private readonly OfficeHost _office = new();
    private Visitor _coach = null!;

    public async ValueTask InitializeAsync() => _coach = await _office.OpensThePractice();

    public ValueTask DisposeAsync()
    {
        _office.Dispose();
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task A_lesson_begins_with_a_day_and_a_club()
    {
        var student = await _coach.Registers();
        await _coach.Open($"{student}/lessons/new");
        Assert.Equal(5, _coach.Page.QuerySelectorAll("button.club").Length);

        await _coach.Send("main form", ("HeldOn", "tomorrow"), ("Club", "driver"));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, _coach.Status);
        Assert.Contains("write it like 2026-05-04", _coach.Alert, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Every_field_carries_its_unit_a_numeric_keypad_and_a_label()
    {
        await _coach.StartsALesson();

        var fields = _coach.Page.QuerySelectorAll("input[data-reading]");
        Assert.True(fields.Length > 30);
        Assert.All(fields, f =>
        {
            Assert.Equal("decimal", f.GetAttribute("inputmode"));
            Assert.NotEmpty(f.ParentElement!.QuerySelector(".unit")!.TextContent);
            Assert.NotNull(_coach.Page.QuerySelector($"label[for='{f.Id}']"));
        });
        Assert.Single(_coach.Page.QuerySelectorAll("h1"));
    }

    [Fact]
    public async Task What_was_saved_comes_back_graded()
    {
        await _coach.StartsALesson();

        await _coach.Send("#sheet", ("readings[impact-spine-tilt]", "14 13,5 14.5"), ("FrameRate", "240"), ("Observations", "Lunges."));

        Assert.Contains("saved", _coach.Page.QuerySelector(".notice")!.TextContent, StringComparison.Ordinal);
        Assert.Equal("14 13.5 14.5", Field("impact-spine-tilt").GetAttribute("value"));
        var grade = _coach.Page.QuerySelector("#grade-impact-spine-tilt")!;
        Assert.Contains("moderate, low", grade.TextContent, StringComparison.Ordinal);
        Assert.NotNull(grade.QuerySelector("svg[role=img]"));
        Assert.Equal("Lunges.", _coach.Page.QuerySelector("#Observations")!.TextContent);
    }

    [Fact]
    public async Task An_angle_read_from_the_ground_is_converted()
    {
        await _coach.StartsALesson();
        Assert.NotNull(_coach.Page.QuerySelector("[name='as-read[impact-spine-tilt]']"));

        // 102 from the ground on the target side is 12 away from the target (common practice, no source).
        await _coach.Send("#sheet", ("readings[impact-spine-tilt]", "102"), ("as-read[impact-spine-tilt]", "yes"));

        Assert.Equal("12", Field("impact-spine-tilt").GetAttribute("value"));
    }

    [Fact]
    public async Task A_refused_save_says_every_reason_and_loses_nothing()
    {
        var lesson = await _coach.StartsALesson();

        await _coach.Send("#sheet", ("readings[impact-spine-tilt]", "14"), ("readings[club-path]", "NaN"), ("readings[attack-angle]", "-55"), ("readings[downswing-head-shift]", "5 kg"), ("Notes", "Left early."));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, _coach.Status);
        Assert.Equal(3, _coach.Page.QuerySelectorAll("[role=alert] li").Length);
        Assert.Equal("true", Field("club-path").GetAttribute("aria-invalid"));
        Assert.Equal(["14", "NaN", "-55", "5 kg"], new[] { "impact-spine-tilt", "club-path", "attack-angle", "downswing-head-shift" }.Select(m => Field(m).GetAttribute("value")));
        Assert.Equal("Left early.", _coach.Page.QuerySelector("#Notes")!.TextContent);
        await _coach.Open(lesson);
        Assert.Equal("", Field("impact-spine-tilt").GetAttribute("value"));
    }

    [Fact]
    public async Task A_bad_day_is_refused_with_all_fields_as_typed()
    {
        await _coach.StartsALesson();

        await _coach.Send("#sheet", ("HeldOn", "2026-13-40"), ("readings[club-path]", "3"));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, _coach.Status);
        Assert.Equal("3", Field("club-path").GetAttribute("value"));
    }

    [Fact]
    public async Task Two_who_save_the_same_lesson_both_see_both_values()
    {
        var lesson = await _coach.StartsALesson();
        var other = await _coach.LetsIn(_office, "coach");
        await other.Open(lesson);
        await _coach.Open(lesson);
        await _coach.Send("#sheet", ("Observations", "Mine was first."));

        await other.Send("#sheet", ("Observations", "Mine was second."));

        Assert.Equal(HttpStatusCode.Conflict, other.Status);
        Assert.Contains("Mine was first.", other.Page.QuerySelector("#words .saved-meanwhile")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("Mine was second.", other.Page.QuerySelector("#Observations")!.TextContent, StringComparison.Ordinal);
        await other.Send("#sheet");
        Assert.Equal(HttpStatusCode.OK, other.Status);
    }

    [Fact]
    public async Task Values_kept_on_a_device_are_kept_for_one_account()
    {
        var lesson = await _coach.StartsALesson();
        var mine = _coach.Page.QuerySelector("#sheet")!.GetAttribute("data-keep");
        var other = await _coach.LetsIn(_office, "coach");
        await other.Open(lesson);

        Assert.NotEqual(mine, other.Page.QuerySelector("#sheet")!.GetAttribute("data-keep"));
    }

    private IElement Field(string measure) => _coach.Page.QuerySelector($"[name='readings[{measure}]']")!;
}

using System.Globalization;
using System.Text;
using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Measuring.Landmarks;
using CoachOffice.SeedDemo.Builders;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace CoachOffice.Browser.Tests.Media;

/// <summary>A swing drawn to scale, so that every value is known, is measured by clicking as a coach would.</summary>
public sealed class PointsOnAStillTests(Chromium chromium) : IClassFixture<Chromium>
{
    [Fact]
    public async Task A_swing_drawn_to_scale_is_measured_by_clicking_and_goes_into_the_sheet()
    {
        await using var office = new RunningOffice();
        await using var window = await chromium.Open();
        var coach = new Marker(new Person(window, office.Url));
        var lesson = await coach.StartsALesson();
        var table = new StringBuilder("| measure | true | clicked | ± clicks | camera, up to |\n|---|---|---|---|---|\n");

        var read = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach (var figure in AStickFigure.Swing)
        {
            var drawn = new DrawnStill(figure);
            await coach.AddsAStill(lesson, drawn);
            await coach.Person.Type("KnownLengthCm", AStickFigure.KnownLengthCm.ToString(CultureInfo.InvariantCulture));
            foreach (var landmark in await coach.Asked()) await coach.Clicks(drawn.At(landmark));
            await Compare(coach, figure, read, table);
            if (figure is { View: View.FaceOn, Moment: Moment.Impact }) await coach.Window.LookAt("still");
            await coach.Person.Press("Keep them and put the ticked values into the sheet");
            Assert.Equal(lesson, coach.Person.Path);
        }

        await coach.Person.GoTo(lesson + "/stills");
        await coach.Window.LookAt("stills");
        Assert.Equal(read.OrderBy(r => r.Key), (await Sheet(office, lesson)).OrderBy(r => r.Key));
        Keep(table.ToString());
        Assert.Empty(window.Complaints);
    }

    [Fact]
    public async Task A_point_is_moved_by_keys_and_by_a_finger_with_a_glass_beside_it()
    {
        await using var office = new RunningOffice();
        await using var window = await chromium.Open();
        var coach = new Marker(new Person(window, office.Url));
        var lesson = await coach.StartsALesson();
        await coach.Person.GoTo(lesson + "/stills");
        await coach.Window.LookAt("stills-empty");
        var drawn = new DrawnStill(AStickFigure.At(View.FaceOn, Moment.Top));
        await coach.AddsAStill(lesson, drawn);
        var first = (await coach.Asked())[0];

        await coach.Touches(drawn.At(first), lift: false);
        Assert.Equal("visible", await coach.Glass());
        await coach.Window.LookAt("still-glass");
        await coach.Lifts();
        Assert.Equal("hidden", await coach.Glass());

        var before = await coach.Fields(first);
        await window.Page.Keyboard.PressAsync("ArrowRight");
        await window.Page.Keyboard.DownAsync("Shift");
        await window.Page.Keyboard.PressAsync("ArrowUp");
        await window.Page.Keyboard.UpAsync("Shift");
        Assert.Equal((before.X + 1, before.Y - 10), await coach.Fields(first));

        await coach.Clicks(drawn.At((await coach.Asked())[1]));
        await window.Page.Keyboard.DownAsync("Shift");
        await window.Page.Keyboard.PressAsync("Tab");
        await window.Page.Keyboard.UpAsync("Shift");
        Assert.Equal(Terms.Of(first), await window.Page.EvaluateExpressionAsync<string>("document.activeElement.dataset.landmark"));
        await window.Page.Keyboard.PressAsync("Delete");
        Assert.Equal("", await window.Page.EvaluateExpressionAsync<string>($"document.querySelector(\"[name='x[{Terms.Of(first)}]']\").value"));
        await window.Page.Keyboard.PressAsync("Enter");
        Assert.Equal((DrawnStill.Width / 2d, DrawnStill.Height / 2d), await coach.Fields(first));
        Assert.Empty(window.Complaints);
    }

    [Fact]
    public async Task A_copied_picture_is_pasted_and_points_outlive_an_office_that_cannot_be_reached()
    {
        await using var office = new RunningOffice();
        await using var window = await chromium.Open();
        var coach = new Marker(new Person(window, office.Url));
        var lesson = await coach.StartsALesson();
        var drawn = new DrawnStill(AStickFigure.At(View.FaceOn, Moment.Address));
        await coach.Person.GoTo(lesson + "/stills");

        await coach.Pastes(drawn.Png());

        Assert.StartsWith(lesson + "/stills/", coach.Person.Path, StringComparison.Ordinal);
        await window.Page.SetOfflineModeAsync(true);
        var first = (await coach.Asked())[0];
        await coach.Clicks(drawn.At(first));
        await window.Page.WaitForFunctionAsync("() => document.getElementById('values').textContent.includes('cannot be reached')");
        await window.Page.SetOfflineModeAsync(false);
        var clicked = await coach.Fields(first);
        await coach.Person.Press("Keep the marks");
        Assert.Equal(clicked, await coach.Fields(first));
        await coach.Person.Press("Ida Sommerfeld");
        await coach.Person.Press("Consent");
        await coach.Window.LookAt("media-consent");
    }

    private static async Task Compare(Marker coach, StickStill figure, Dictionary<string, double> read, StringBuilder table)
    {
        foreach (var (measure, truth) in figure.Truth)
        {
            var (name, value, click, camera) = await coach.Value(measure);
            read[measure] = value;
            table.Append(CultureInfo.InvariantCulture, $"| {name} | {truth} | {value} | {click} | {camera} |\n");
            Assert.True(Math.Abs(value - truth) <= 2 * click, $"{measure}: clicked {value}, true {truth}, error of clicks {click}");
        }
    }

    private static async Task<Dictionary<string, double>> Sheet(RunningOffice office, string lesson)
    {
        await using var scope = office.Services.CreateAsyncScope();
        var id = LessonId.From(Guid.Parse(lesson.Split('/')[^1]));
        var readings = await scope.ServiceProvider.GetRequiredService<OfficeDb>().Readings.Where(r => r.LessonId == id && r.WithdrawnAt == null).ToListAsync();
        return readings.ToDictionary(r => r.Measure.Value, r => r.Value);
    }

    /// <summary>The table for a person to look at, where the pictures go.</summary>
    private static void Keep(string table)
    {
        if (Environment.GetEnvironmentVariable("COACHOFFICE_PICTURES") is { Length: > 0 } folder) File.WriteAllText(Path.Combine(folder, "points-on-a-still.md"), table);
    }
}

using CoachOffice.Browser.Tests.Lessons;
using PuppeteerSharp.Input;

namespace CoachOffice.Browser.Tests.Bookings;

/// <summary>The calendar as a coach uses it: looked at empty, full and with lessons side by side; lessons moved by pointer, by a long press and by keys.</summary>
public sealed class CalendarTests(Chromium chromium) : IClassFixture<Chromium>
{
    [Fact]
    public async Task A_week_is_fit_to_be_seen_empty_full_and_overlapping()
    {
        await using var office = new RunningOffice();
        await using var window = await chromium.Open();
        var coach = new Person(window, office.Url);
        await coach.Begins();
        await coach.GoTo("/calendar");
        await coach.Sees("Nothing to book yet");
        await window.LookAt("calendar-empty");
        var week = new WeekOfLessons(office);
        await week.SetUp();
        await week.Fill();

        await coach.GoTo("/calendar?day=2026-05-04&view=week");
        await window.LookAt("calendar-week");
        await coach.GoTo("/calendar?day=2026-05-04&view=week&coach=all");
        await window.LookAt("calendar-overlapping");
        await coach.GoTo("/calendar?day=2026-05-04&view=day&coach=all");
        await window.LookAt("calendar-day");
        await coach.GoTo($"/bookings/{week.First.Value}");
        await window.LookAt("calendar-booking");
        await coach.GoTo("/bookings/new?day=2026-05-04&at=16:30");
        await window.LookAt("calendar-new");
        await coach.Tick("OfferingId", "00000000-0000-0000-0000-000000000003");
        await coach.Press("Free times of this coach");
        await coach.Sees("free");
        await window.LookAt("calendar-free");
        await coach.Press("17:00");
        Assert.Equal("17:00", await coach.Page.EvaluateExpressionAsync<string>("document.getElementById('Input_At').value"));

        Assert.Empty(window.Complaints);
    }

    [Fact]
    public async Task A_lesson_is_dragged_lengthened_moved_by_keys_and_put_back()
    {
        await using var office = new RunningOffice();
        await using var window = await chromium.Open();
        var coach = new Person(window, office.Url);
        await coach.Begins();
        var week = new WeekOfLessons(office);
        await week.SetUp();
        await week.Fill();
        await coach.GoTo("/calendar?day=2026-05-04&view=week");
        var booking = $"[data-id='{week.First.Value}']";

        // An hour down and a day to the right.
        await Drag(coach, booking, fromBottom: false, right: 1, down: 64);
        await coach.Hears("Moved to Tue 5 May, 11:00");
        Assert.Equal("2026-05-05T11:00", await Data(coach, booking, "start"));
        await coach.Press("Undo");
        Assert.Equal("2026-05-04T10:00", await Data(coach, booking, "start"));

        // The lower edge makes it longer, over the next one not.
        await Drag(coach, booking, fromBottom: true, right: 0, down: 32);
        await coach.Hears("10:00, 90 minutes");
        await coach.Page.FocusAsync(booking);
        await Chord(coach, "Alt", "ArrowDown");
        await coach.Hears("Moved to Mon 4 May, 10:15");
        await Chord(coach, "Alt", "Shift", "ArrowUp");
        await coach.Hears("10:15, 75 minutes");
        await Drag(coach, booking, fromBottom: false, right: 0, down: -64);
        await coach.Hears("is booked from 09:00 to 09:30 then");
        Assert.Equal(("2026-05-04T10:15", "75"), (await Data(coach, booking, "start"), await Data(coach, booking, "minutes")));
        Assert.Empty(window.Complaints);
    }

    private static Task<string> Data(Person coach, string booking, string name) =>
        coach.Page.EvaluateFunctionAsync<string>("(b, n) => document.querySelector(b).dataset[n]", booking, name);

    private static async Task Drag(Person coach, string booking, bool fromBottom, int right, int down)
    {
        await coach.Page.WaitForSelectorAsync(".calendar:not(.busy)");
        var box = await (await coach.Page.QuerySelectorAsync(booking)).BoundingBoxAsync();
        var day = await (await coach.Page.QuerySelectorAsync(".calendar .day")).BoundingBoxAsync();
        var (x, y) = (box.X + 12, fromBottom ? box.Y + box.Height - 3 : box.Y + 8);
        await coach.Page.Mouse.MoveAsync(x, y);
        await coach.Page.Mouse.DownAsync();
        await coach.Page.Mouse.MoveAsync(x + (right * day.Width), y + down, new MoveOptions { Steps = 6 });
        await coach.Page.Mouse.UpAsync();
    }

    private static async Task Chord(Person coach, params string[] keys)
    {
        foreach (var key in keys) await coach.Page.Keyboard.DownAsync(key);
        foreach (var key in keys.Reverse()) await coach.Page.Keyboard.UpAsync(key);
    }
}

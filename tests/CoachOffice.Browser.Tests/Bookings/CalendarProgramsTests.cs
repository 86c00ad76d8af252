using CoachOffice.Browser.Tests.Lessons;

namespace CoachOffice.Browser.Tests.Bookings;

/// <summary>Calendar addresses, busy times and links to the lessons as people see them.</summary>
public sealed class CalendarProgramsTests(Chromium chromium) : IClassFixture<Chromium>
{
    [Fact]
    public async Task An_address_is_made_a_calendar_brought_and_a_link_handed_out()
    {
        await using var office = new RunningOffice();
        await using var window = await chromium.Open();
        var coach = new Person(window, office.Url);
        await coach.Begins();
        var week = new WeekOfLessons(office);
        await week.SetUp();

        await coach.GoTo("/calendar/feed");
        await window.LookAt("feed-none");
        await coach.Press("Make an address");
        await window.LookAt("feed-made");
        await coach.GoTo("/calendar/busy");
        await window.LookAt("busy-none");
        await Bring(coach);
        await coach.Press("Look into it");
        await coach.Sees("would be kept as");
        await window.LookAt("busy-preview");
        await coach.Press("Keep these times");
        await window.LookAt("busy-kept");

        await coach.GoTo("/students");
        await coach.Press("Ann Li");
        await coach.Press("Link to lessons");
        await coach.Press("Make a link");
        await window.LookAt("lessons-link");
        var link = await coach.Page.EvaluateExpressionAsync<string>("document.querySelector('#address').value");
        await coach.GoTo(office.Url + new Uri(link).AbsolutePath);
        await coach.GoTo("/my-lessons/calendar");
        await window.LookAt("my-calendar-none");
        await coach.Press("Make an address");
        await window.LookAt("my-calendar-made");

        Assert.Empty(window.Complaints);
    }

    private static Task Bring(Person coach)
    {
        const string Days = "BEGIN:VEVENT\r\nUID:a\r\nDTSTART;TZID=Europe/London:20260106T120000\r\nDURATION:PT1H\r\nRRULE:FREQ=WEEKLY\r\nEND:VEVENT\r\nBEGIN:VEVENT\r\nUID:b\r\nDTSTART:20990101T090000Z\r\nDURATION:PT1H\r\nEND:VEVENT\r\nBEGIN:VEVENT\r\nUID:c\r\nDTSTART;TZID=Europe/London:20260106T150000\r\nDURATION:PT1H\r\nRRULE:FREQ=WEEKLY\r\nTRANSP:TRANSPARENT\r\nEND:VEVENT\r\n";
        const string File = $"BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//T//T//EN\r\n{Days}END:VCALENDAR\r\n";
        return coach.Page.EvaluateFunctionAsync("t => { const d = new DataTransfer(); d.items.add(new File([t], 'family.ics', { type: 'text/calendar' })); document.querySelector('#File').files = d.files; }", File);
    }
}

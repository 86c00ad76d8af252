namespace CoachOffice.Browser.Tests.Bookings;

/// <summary>A student's own path on a phone: a link, a free time, one press; another day; and the waiting list that works by itself.</summary>
public sealed class MyLessonsTests(Chromium chromium) : IClassFixture<Chromium>
{
    [Fact]
    public async Task Students_book_move_cancel_and_wait_by_themselves()
    {
        await using var office = new RunningOffice();
        await using var desk = await chromium.Open();
        var owner = new Person(desk, office.Url);
        await SettingUp.Opens(owner);
        await SettingUp.AddsPlace(owner, "Harbour Road range", "1 Harbour Road, by the old lighthouse", "Bay 1");
        await SettingUp.AddsOffering(owner, "Private hour", "private", "45,00");
        await SettingUp.AddsHours(owner, "09:00", "13:00", 1, 3);
        await SettingUp.AddsHours(owner, "18:00", "19:00", 5);

        await using var phone = await chromium.Open();
        var ann = new Person(phone, office.Url);
        await Opens(ann, await LinkOf(owner, "Oluwaseun-Bartholomew", "Featherstonehaugh"));
        await phone.LookAt("my-lessons-empty");
        await ann.Press("Book a lesson");
        await phone.LookAt("my-lessons-offerings");
        await ann.Press("Private hour");
        await phone.LookAt("my-lessons-days");
        await ann.Press("Wed 6 May");
        await ann.Sees("05:00 in America/New York");
        await phone.LookAt("my-lessons-times");
        await ann.Press("10:00");
        await ann.Sees("It is not booked yet");
        await ann.Sees("half the price, GBP\u00A022.50, is owed");
        await phone.LookAt("my-lessons-confirm");
        await ann.Press("Book it");
        await phone.LookAt("my-lessons-booked");
        await ann.Press("Move it");
        await ann.Press("Fri 8 May");
        await ann.Press("18:00");
        await ann.Sees("Friday 8 May 2026, 18:00 to 19:00 (Europe/London)");
        await phone.LookAt("my-lessons-move");
        await ann.Press("Move it");
        await ann.Sees("Moved.");

        await Waits(office, owner, ann);
        Assert.Empty(phone.Complaints);
        Assert.Empty(desk.Complaints);
    }

    private async Task Waits(RunningOffice office, Person owner, Person ann)
    {
        await using var other = await chromium.Open();
        var bob = new Person(other, office.Url);
        await Opens(bob, await LinkOf(owner, "Bob", "Okafor"));
        await bob.Press("Book a lesson");
        await bob.Press("Private hour");
        await bob.Unfold();
        await bob.Type("first", "2026-05-08");
        await bob.Type("last", "2026-05-08");
        await bob.Press("Wait for it");
        await other.LookAt("my-lessons-waiting");

        await ann.Press("Cancel this lesson");
        await Opens(bob, "/my-lessons");
        await bob.Sees("A place became free");
        await other.LookAt("my-lessons-offer");
        office.Clock.Advance(TimeSpan.FromMinutes(1));
        await office.Sweep();
        Assert.Contains(await office.Letters(), l => (l.TextBody ?? "").Contains("Friday 8 May 2026, 18:00", StringComparison.Ordinal));
        await bob.Press("Take it");
        await bob.Sees("Booked.");
        office.Clock.Advance(TimeSpan.FromDays(4) + TimeSpan.FromHours(1));
        await Opens(bob, "/my-lessons");
        await bob.Press("Friday 8 May 2026");
        await bob.Sees("The notice of 24 hours is over: half the price");
        await other.LookAt("my-lessons-late");
        Assert.Empty(other.Complaints);
    }

    /// <summary>The browser's clock is another than the practice's: the page comes again with both.</summary>
    private static async Task Opens(Person student, string address)
    {
        await student.Page.EmulateTimezoneAsync("America/New_York");
        await student.GoTo(address);
        await student.Page.WaitForFunctionAsync("() => location.search.includes('zone=') && document.readyState === 'complete'");
    }

    private static async Task<string> LinkOf(Person owner, string given, string family)
    {
        await owner.GoTo("/students/new");
        await owner.Type("Input.GivenName", given);
        await owner.Type("Input.FamilyName", family);
        await owner.Type("Input.Email", "student@example.org");
        await owner.Type("Input.BirthDate", "1988-06-14");
        await owner.Press("Add the student");
        await owner.Press("Link to lessons");
        await owner.Press("Make a link");
        return new Uri(await owner.Page.EvaluateExpressionAsync<string>("document.querySelector('#address').value")).AbsolutePath;
    }
}

using System.Text.RegularExpressions;
using MimeKit;

namespace CoachOffice.Browser.Tests.Plans;

/// <summary>One person's way through the main job: from an empty office to a verdict.</summary>
public sealed partial class TheWholeLoopTests(Chromium chromium) : IClassFixture<Chromium>
{
    [Fact]
    public async Task A_measured_lesson_becomes_a_plan_in_the_students_hand_and_comes_back_as_a_retest()
    {
        await using var office = new RunningOffice();
        await using var desk = await chromium.Open();
        await using var phone = await chromium.Open();
        var coach = new Person(desk, office.Url);
        var student = new Person(phone, office.Url);

        await OpensThePractice(coach);
        await AddsAStudent(coach);
        await RecordsALesson(coach);
        var plan = await DraftsChangesAndApproves(coach);
        await office.Sweep();
        var letter = Assert.Single(await office.Letters());
        await OpensThePlan(student, letter);
        await student.Window.LookAt("my-plan");
        await student.GoTo("/my-plan/numbers");
        await student.Window.LookAt("my-numbers");
        await office.Pass(TimeSpan.FromDays(2));
        await OpensThePlan(student, letter);
        await Practises(student);
        await GetsThePrompt(coach, office);
        await RecordsTheRetest(coach, plan);

        Assert.Empty(desk.Complaints);
        Assert.Empty(phone.Complaints);
    }

    private static async Task OpensThePractice(Person coach)
    {
        await coach.GoTo("/");
        await coach.Window.LookAt("first-run");
        await coach.Type("Input.OwnerName", "Marianne Wetherby");
        await coach.Type("Input.Email", "marianne@example.org");
        await coach.Type("Input.Password", Person.Password);
        await coach.Type("Input.PracticeName", "Hill Lane Golf Lessons");
        await coach.Type("Input.Zone", "Europe/London");
        await coach.Press("Open the practice");
        await coach.Window.LookAt("second-step");
        await coach.Press("Not now");
        await coach.Window.LookAt("today-empty");
    }

    private static async Task AddsAStudent(Person coach)
    {
        await coach.GoTo("/students");
        await coach.Window.LookAt("students-empty");
        await coach.GoTo("/students/new");
        await coach.Type("Input.GivenName", "Oluwaseun-Bartholomew");
        await coach.Type("Input.FamilyName", "Featherstonehaugh-Wolfeschlegelstein");
        await coach.Type("Input.Email", "oluwaseun@example.org");
        await coach.Type("Input.BirthDate", "1988-06-14");
        await coach.Window.LookAt("student-new");
        await coach.Press("Add the student");
        await coach.Sees("Featherstonehaugh-Wolfeschlegelstein");
        await coach.Window.LookAt("student-empty");
    }

    private static async Task RecordsALesson(Person coach)
    {
        await coach.Press("Record a lesson");
        await coach.Window.LookAt("lesson-new");
        await coach.Press("Driver");
        await coach.Type("readings[impact-spine-tilt]", "14 15 13");
        await coach.Type("readings[downswing-head-shift]", "9 8,5 9,5");
        await coach.Type("readings[address-spine-tilt]", "6 7 6");
        await coach.Type("readings[club-path]", "-6 -5 -7");
        await coach.Page.WaitForFunctionAsync("() => document.querySelector(`[data-measure='downswing-head-shift'] .measure-grade`).textContent.trim() !== ''");
        await coach.Window.LookAt("lesson");
    }

    private static async Task<string> DraftsChangesAndApproves(Person coach)
    {
        await coach.Press("Make the draft");
        await coach.Sees("Work on this");
        await coach.Window.LookAt("draft");
        await coach.Unfold();
        await coach.Window.LookAt("draft-unfolded");
        await coach.OpensForm("drill");
        await coach.Type("Reps", "7");
        await coach.Type("Reason", "does-not-suit-this-person");
        await coach.Type("Comment", "Fewer and slower to begin with");
        await coach.Press("Keep my change");
        await coach.Sees("7");
        await coach.Press("Approve and send");
        await coach.Window.LookAt("plan-active");
        return coach.Path;
    }

    private static async Task OpensThePlan(Person student, MimeMessage letter)
    {
        Assert.Equal("oluwaseun@example.org", letter.To.Mailboxes.Single().Address);
        var link = Link().Match(letter.TextBody ?? "").Value;
        await student.GoTo(new Uri(link).AbsolutePath);
        Assert.Equal("/my-plan", student.Path);
    }

    private static async Task Practises(Person student)
    {
        await student.Press("I practised");
        await student.Type("Minutes", "20");
        await student.Tick("Share", "100");
        await student.Tick("Pain", "no");
        await student.Window.LookAt("practised");
        await student.Press("Send");
        await student.Sees("Noted");
        await student.Window.LookAt("noted");
    }

    private static async Task GetsThePrompt(Person coach, RunningOffice office)
    {
        for (var day = 0; day < 14; day++) await office.Pass(TimeSpan.FromDays(1));
        var letters = await office.Letters();
        Assert.Contains(letters, l => l.MessageId!.StartsWith("retest-prompt.", StringComparison.Ordinal));
        Assert.Single(letters, l => l.MessageId!.StartsWith("plan-delivery.", StringComparison.Ordinal));
        await coach.SignInAgain("/follow-ups?show=all");
        await coach.Window.LookAt("follow-ups");
        await coach.GoTo("/");
        await coach.Window.LookAt("today");
    }

    private static async Task RecordsTheRetest(Person coach, string plan)
    {
        await coach.GoTo(plan);
        await coach.GoTo(await coach.Page.EvaluateExpressionAsync<string>("document.querySelector(`a[href^='/retests/']`).getAttribute('href')"));
        await coach.Window.LookAt("retest");
        await coach.Type("readings[downswing-head-shift]", "1 2 1 1,5 2");
        await coach.Press("Judge it");
        await coach.Sees("moved toward");
        await coach.Sees("in range");
        await coach.Window.LookAt("verdict");
        await coach.GoTo("/rulebook");
        await coach.Window.LookAt("rulebook");
        await coach.GoTo("/settings");
        await coach.Window.LookAt("settings");
    }

    [GeneratedRegex(@"https?://\S+/p/[A-Za-z0-9_-]+", RegexOptions.None, 1000)]
    private static partial Regex Link();
}

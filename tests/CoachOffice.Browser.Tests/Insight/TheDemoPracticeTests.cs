namespace CoachOffice.Browser.Tests.Insight;

/// <summary>A full office: every list has rows, names are long, plans are in every state.</summary>
public sealed class TheDemoPracticeTests(Chromium chromium) : IClassFixture<Chromium>
{
    [Fact]
    public async Task Every_page_of_a_full_office_is_fit_to_be_seen_at_three_sizes()
    {
        await using var office = new RunningOffice();
        await using var window = await chromium.Open();
        var owner = new Person(window, office.Url);
        await Opens(owner);

        await owner.Window.LookAt("demo-today");
        await LooksAtOneOfEach(owner);
        await LooksAtMeasures(owner);
        await owner.GoTo("/students");
        await owner.Window.LookAt("demo-students");
        await owner.GoTo("/how-sure");
        await owner.Sees("scatter");
        await owner.Window.LookAt("demo-how-sure");
        await owner.GoTo("/follow-ups?show=all");
        await owner.Window.LookAt("demo-follow-ups");
        await LooksAtWhatGoesOut(owner);
        foreach (var page in new[] { "patterns", "ranges", "drills", "cautions", "faults/impact-spine-tilt.low" })
        {
            await owner.GoTo("/rulebook/" + page);
            await owner.Window.LookAt("rulebook-" + page.Replace('/', '-'));
        }

        Assert.Empty(window.Complaints);
    }

    private static async Task Opens(Person owner)
    {
        await owner.GoTo("/");
        await owner.Type("Input.OwnerName", "Marianne Wetherby");
        await owner.Type("Input.Email", "marianne@example.org");
        await owner.Type("Input.Password", Person.Password);
        await owner.Type("Input.PracticeName", "Hill Lane Golf Lessons");
        await owner.Type("Input.Zone", "Europe/London");
        await owner.Tick("Input.Start", "demo");
        await owner.Press("Open the practice");
        await owner.Page.WaitForFunctionAsync("() => location.pathname !== '/first-run/demo' && location.pathname !== '/first-run'", new PuppeteerSharp.WaitForFunctionOptions { Timeout = 300_000 });
        await owner.SignInAgain("/");
    }

    /// <summary>From the page of a student, where one of each ended.</summary>
    private static async Task LooksAtMeasures(Person owner)
    {
        var student = owner.Path;
        await owner.GoTo(student + "/lessons/side-by-side");
        await owner.Window.LookAt("demo-side-by-side");
        await owner.GoTo(student);
        foreach (var (name, link) in new[] { ("measures", "a[href$='/measures']"), ("measure", ".charts a") })
        {
            var address = await owner.Page.EvaluateFunctionAsync<string?>("s => document.querySelector('main ' + s)?.getAttribute('href') ?? null", link);
            Assert.True(address is not null, $"Nothing leads to the {name}");
            await owner.GoTo(address);
            await owner.Window.LookAt("demo-" + name);
        }
    }

    private static async Task LooksAtWhatGoesOut(Person owner)
    {
        foreach (var (name, path) in new[] { ("weeks-ahead", "/follow-ups"), ("message-kinds", "/settings/messages"), ("message-kind", "/settings/messages/practice-nudge"), ("backups", "/settings/backups"), ("missed", "/calendar/attendance") })
        {
            await owner.GoTo(path);
            await owner.Window.LookAt("demo-" + name);
        }

        await owner.GoTo("/follow-ups");
        var message = await owner.Page.EvaluateFunctionAsync<string>("() => document.querySelector(`main a[href^='/follow-ups/']`).getAttribute('href')");
        var student = await owner.Page.EvaluateFunctionAsync<string>("() => document.querySelector(`main a[href^='/students/']`).getAttribute('href')");
        await owner.GoTo(message);
        await owner.Window.LookAt("demo-message");
        await owner.GoTo(student.Split('?')[0] + "/messages");
        await owner.Window.LookAt("demo-reach");
    }

    /// <summary>The first of everything Today names, each opened as a person would.</summary>
    private static async Task LooksAtOneOfEach(Person owner)
    {
        foreach (var (name, link) in new[] { ("draft", "section[aria-labelledby='drafts'] a"), ("plan", "a[href^='/plans/']"), ("retest", "a[href^='/retests/']"), ("lesson", "a[href^='/lessons/']"), ("student", "a[href^='/students/']") })
        {
            await owner.GoTo("/");
            var address = await owner.Page.EvaluateFunctionAsync<string?>("s => document.querySelector('main ' + s)?.getAttribute('href') ?? null", link);
            Assert.True(address is not null, $"Today names no {name}");
            await owner.GoTo(address);
            await owner.Window.LookAt("demo-" + name);
        }
    }
}

using System.Text.RegularExpressions;

namespace CoachOffice.Web.Tests;

/// <summary>The steps of a teaching day that many tests begin with.</summary>
internal static partial class Teaching
{
    public const string Student = "Ida Sommerfeld";

    /// <summary>A lesson whose cause is clear: the head runs ahead on the way down.</summary>
    public static readonly (string Measure, string Text)[] HeadRunsAhead =
    [
        ("impact-spine-tilt", "14 13,5 14.5"), ("downswing-head-shift", "13 12 14"), ("top-spine-tilt", "8"), ("address-spine-tilt", "8"), ("downswing-pelvis-shift", "8 9"),
    ];

    /// <summary>The page of a new grown-up student.</summary>
    public static async Task<string> Registers(this Visitor coach, string given = "Ida", string family = "Sommerfeld")
    {
        await coach.Open("/students/new");
        await coach.Send("main form", ("Input.GivenName", given), ("Input.FamilyName", family), ("Input.Email", $"{given}@example.org"), ("Input.BirthDate", "1988-03-04"), ("Input.MinutesPerWeek", "90"), ("Input.DaysPerWeek", "3"));
        Assert.StartsWith("/students/", coach.Path, StringComparison.Ordinal);
        return coach.Path;
    }

    /// <summary>Stands on the sheet of a new lesson.</summary>
    public static async Task<string> StartsALesson(this Visitor coach, string heldOn = "2026-05-04")
    {
        var student = await coach.Registers();
        await coach.Open($"{student}/lessons/new");
        await coach.Send("main form", ("HeldOn", heldOn), ("Club", "driver"));
        Assert.StartsWith("/lessons/", coach.Path, StringComparison.Ordinal);
        return coach.Path;
    }

    /// <summary>Stands on the draft made from a lesson.</summary>
    public static async Task<string> Drafts(this Visitor coach)
    {
        var lesson = await coach.StartsALesson();
        await coach.SendTo($"{lesson}?handler=draft", "#sheet", [.. HeadRunsAhead.Select(r => ($"readings[{r.Measure}]", (string?)r.Text)), ("FrameRate", "240")]);
        Assert.StartsWith("/plans/", coach.Path, StringComparison.Ordinal);
        return coach.Path;
    }

    /// <summary>Stands on the plan that is now the student's.</summary>
    public static async Task<string> Approves(this Visitor coach)
    {
        var plan = await coach.Drafts();
        await coach.Send("form.approve");
        Assert.Equal(plan, coach.Path);
        return plan;
    }

    /// <summary>Hands out a private link and gives its address.</summary>
    public static async Task<string> HandsOutALink(this Visitor coach, string plan)
    {
        await coach.Open($"{plan}/print");
        await coach.Send(".print-bar form");
        return Link().Match(coach.Text).Value;
    }

    [GeneratedRegex(@"/p/[\w-]{43}", RegexOptions.None, 1000)]
    private static partial Regex Link();
}

using CoachOffice.Domain;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases;
using CoachOffice.UseCases.Lessons;
using CoachOffice.UseCases.Students;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Security;
using CoachOffice.Web.Shell.Wording;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Lessons;

[Authorize(OfficePolicies.Teach)]
public sealed class NewModel(StartLesson start, ReadStudent read, PracticeClock clock) : OfficePage
{
    internal static Club[] Clubs { get; } = Enum.GetValues<Club>();

    /// <summary>As typed.</summary>
    [BindProperty]
    public string? HeldOn { get; set; }

    [BindProperty]
    public string? Club { get; set; }

    internal string? Refused(string field) => Refusals.FirstOrDefault(r => r.Field == field)?.Sentence;

    public async Task<IActionResult> OnGetAsync(Guid id)
    {
        if (await read.Of(StudentId.From(id)) is not { ErasedAt: null }) return NotFound();
        HeldOn = DayEntry.Text(await clock.Today());
        return Page();
    }

    public async Task<IActionResult> OnPostAsync(Guid id)
    {
        if (DayEntry.Read(HeldOn) is not { } day) return Refuse([DayEntry.Refusal(nameof(HeldOn))], "");
        if (!Terms.TryParse<Club>(Club, out var club)) return Refuse([new Refusal("club-not-known", "Pick one of the five clubs.", nameof(Club))], "");
        var started = await start.For(StudentId.From(id), new LessonHeading(day, club), Actor);
        return started.TryGet(out var lesson) ? LocalRedirect($"/lessons/{lesson.Value}") : Refuse(started.Refusals, "");
    }
}

using CoachOffice.Domain.Lessons;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Lessons;
using CoachOffice.UseCases.Measuring.Again;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Security;
using CoachOffice.Web.Shell.Wording;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Lessons;

[Authorize(OfficePolicies.Teach)]
public sealed class TakeModel(TakePage page, SetFrameRate set, AskSecondReading ask, ReadPractice practice) : OfficePage
{
    internal TakeView View { get; private set; } = null!;

    internal UnitText Units { get; private set; } = UnitText.Metric;

    /// <summary>As typed.</summary>
    [BindProperty]
    public string? FrameRate { get; set; }

    public async Task<IActionResult> OnGetAsync(Guid id, Guid take)
    {
        if (!await Load(id, take)) return NotFound();
        FrameRate = View.FrameRate is { } rate ? ShownUnits.Number(rate) : "";
        return Page();
    }

    public async Task<IActionResult> OnPostAsync(Guid id, Guid take)
    {
        if (!await Load(id, take)) return NotFound();
        var done = await set.Of(LessonId.From(id), TakeId.From(take), FrameRate, Actor);
        return done.Succeeded ? Done($"/lessons/{id}/takes/{take}", "The frame rate is kept, and the lesson is graded with it.") : Refuse(done.Refusals, "");
    }

    /// <summary>Asks for the take to be read a second time.</summary>
    public async Task<IActionResult> OnPostAgainAsync(Guid id, Guid take)
    {
        if (!await Load(id, take)) return NotFound();
        var asked = await ask.Of(LessonId.From(id), TakeId.From(take), Actor);
        return asked.Succeeded ? Done($"/lessons/{id}/takes/{take}", "It waits to be read again. Best some days later, or by another coach.") : Refuse(asked.Refusals, "");
    }

    private async Task<bool> Load(Guid id, Guid take)
    {
        if (await page.Of(LessonId.From(id), TakeId.From(take)) is not { } view) return false;
        View = view;
        Units = UnitText.Of(await practice.Now());
        return true;
    }
}

using CoachOffice.Domain;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Lessons;
using CoachOffice.UseCases.Lessons.Reviews;
using CoachOffice.UseCases.Lessons.Sheets;
using CoachOffice.UseCases.Plans;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Security;
using CoachOffice.Web.Shell.Wording;
using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Lessons;

[Authorize(OfficePolicies.Teach)]
public sealed class RecordModel(LessonPage page, SaveLesson save, DraftPlan draft, ReadPractice practice, IServiceProvider services) : OfficePage, ISheetPage
{
    [BindProperty]
    public SheetInput Sheet { get; set; } = new();

    internal LessonSheet View { get; private set; } = null!;

    internal UnitText Units { get; private set; } = UnitText.Metric;

    /// <summary>The remote review this lesson answers, or null.</summary>
    internal ReviewBeside? Beside { get; private set; }

    UnitText ISheetPage.Units => Units;

    public bool Clashes => Refusals.Any(r => r.Code == Clash.Code);

    /// <summary>By account and record, so that nobody else signed in on this device is offered it.</summary>
    public string KeepKey => $"lesson:{Actor.Account?.Value:N}:{View.Kept.Id.Value:N}";

    /// <summary>Who may send what this device keeps.</summary>
    public string AccountKey => Actor.Account?.Value.ToString() ?? "";

    /// <summary>The lesson by the sheet it was read by, or by another one that is only looked at.</summary>
    public Task<IActionResult> OnGetAsync(Guid id, string? sheet) => Show(id, typed: null, sheet);

    /// <summary>Shows another reading sheet, or one more measure, with everything as typed; nothing is saved.</summary>
    public Task<IActionResult> OnPostSheetAsync(Guid id) => Show(id, Sheet);

    /// <summary>Whether the lesson can still be sent from here: a device that was away asks before it sends.</summary>
    public async Task<IActionResult> OnGetStateAsync(Guid id) =>
        await page.Of(LessonId.From(id), new SheetWish(Actor)) is { } view
            ? new JsonResult(new LessonState(view.Version, Actor.Account!.Value.Value, services.GetRequiredService<IAntiforgery>().GetAndStoreTokens(HttpContext).RequestToken!))
            : NotFound();

    public async Task<IActionResult> OnPostAsync(Guid id) =>
        await Save(id) is { Count: > 0 } refusals ? await Refused(id, refusals) : Done($"/lessons/{id}", "The lesson is saved.");

    public async Task<IActionResult> OnPostDraftAsync(Guid id)
    {
        if (await Save(id) is { Count: > 0 } refusals) return await Refused(id, refusals);
        var drafted = await draft.For(LessonId.From(id), Actor);
        return drafted.TryGet(out var plan) ? LocalRedirect($"/plans/{plan.Value}") : await Refused(id, drafted.Refusals);
    }

    /// <summary>The grades of what stands in the fields now; nothing is saved.</summary>
    public async Task<IActionResult> OnPostGradeAsync() =>
        Partial("_Grades", await services.GetRequiredService<GradeEntries>().Of(Sheet));

    Finding? ISheetPage.FindingOf(SheetRow row) => row.Text == row.Field.Text ? View.Kept.Findings.FirstOrDefault(f => f.Measure.Id == row.Measure.Id) : null;

    IReadOnlyList<ApartSwing> ISheetPage.ApartOf(SheetRow row) => View.Kept.Apart.GetValueOrDefault(row.Measure.Id) ?? [];

    private async Task<IReadOnlyList<Refusal>> Save(Guid id) => Sheet.ToForm() is { Succeeded: true } form
        ? (await save.As(LessonId.From(id), Sheet.Version, form.Value, Actor)).Refusals
        : Sheet.ToForm().Refusals;

    private async Task<IActionResult> Refused(Guid id, IReadOnlyList<Refusal> refusals)
    {
        // After a clash the page shows both values; saving again then means: mine.
        if (refusals.Any(r => r.Code == Clash.Code) && await page.Of(LessonId.From(id), new SheetWish(Actor)) is { } kept) Sheet.Version = kept.Version;
        var shown = await Show(id, Sheet);
        return View is null ? shown : Refuse(refusals, "");
    }

    private async Task<IActionResult> Show(Guid id, SheetInput? typed, string? sheet = null)
    {
        if (await page.Of(LessonId.From(id), new SheetWish(Actor) { Key = typed?.SheetKey ?? sheet, Also = typed?.Filled() ?? [] }) is not { } view) return NotFound();
        View = LessonSheet.Of(view, typed, services.GetRequiredService<INewIds>().Next());
        Units = UnitText.Of(await practice.Now());
        Beside = await services.GetRequiredService<FindReview>().Of(LessonId.From(id));
        return Page();
    }
}

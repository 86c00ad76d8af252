using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;
using CoachOffice.UseCases;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Lessons;
using CoachOffice.UseCases.Measuring;
using CoachOffice.Web.Features.Lessons;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Security;
using CoachOffice.Web.Shell.Wording;
using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Measuring;

[Authorize(OfficePolicies.Teach)]
public sealed class RetestModel(RetestPage page, RecordRetest record, ReadPractice practice, PracticeClock clock, IAntiforgery proofs) : OfficePage, ISheetPage
{
    internal RetestView View { get; private set; } = null!;

    internal IReadOnlyList<SheetRow> Rows { get; private set; } = [];

    UnitText ISheetPage.Units => Units;

    internal UnitText Units { get; private set; } = UnitText.Metric;

    [BindProperty]
    public SheetInput Sheet { get; set; } = new();

    /// <summary>Who may send what this device keeps.</summary>
    public string AccountKey => Actor.Account?.Value.ToString() ?? "";

    public Task<IActionResult> OnGetAsync(Guid id) => Show(id, typed: null);

    /// <summary>Whether the look can still be sent from here, for a device that was away.</summary>
    public async Task<IActionResult> OnGetStateAsync(Guid id) =>
        await page.Of(id) is { } view
            ? new JsonResult(new LessonState(view.Version, Actor.Account!.Value.Value, proofs.GetAndStoreTokens(HttpContext).RequestToken!))
            : NotFound();

    public async Task<IActionResult> OnPostAsync(Guid id)
    {
        if (DayEntry.Read(Sheet.HeldOn) is not { } day) return await Refused(id, [DayEntry.Refusal(nameof(SheetInput.HeldOn))]);
        var judged = await record.With(new RetestForm { RetestId = id, Version = Sheet.Version, HeldOn = day, Entries = Sheet.Entries(), Observations = Sheet.Observations ?? "" }, Actor);
        return judged.TryGet(out var verdict) ? Done($"/retests/{id}", verdict.Sentence) : await Refused(id, judged.Refusals);
    }

    bool ISheetPage.Clashes => false;

    IReadOnlyList<ApartSwing> ISheetPage.ApartOf(SheetRow row) => [];

    Domain.Measuring.Finding? ISheetPage.FindingOf(SheetRow row) => null;

    private async Task<IActionResult> Refused(Guid id, IReadOnlyList<Refusal> refusals)
    {
        var shown = await Show(id, Sheet);
        return View is null ? shown : Refuse(refusals, "");
    }

    private async Task<IActionResult> Show(Guid id, SheetInput? typed)
    {
        if (await page.Of(id) is not { } view) return NotFound();
        View = view;
        typed ??= Answered(view);
        if (typed is not null) Sheet = typed;
        Rows = [.. view.Fields.Select(f => typed is null ? SheetRow.Kept(f) : SheetRow.Typed(f, typed))];
        Units = UnitText.Of(await practice.Now());
        if (typed is null) Sheet = new SheetInput { Version = view.Version, HeldOn = DayEntry.Text(await clock.Today()) };
        return Page();
    }

    // What the student sent stands in the field for the coach to look at; nothing of it counts before it is judged.
    private static SheetInput? Answered(RetestView view) => view is { Answer.Length: > 0, AnsweredOn: { } on, Status: RetestStatus.Ready }
        ? new SheetInput { Version = view.Version, HeldOn = DayEntry.Text(on), Readings = { [view.Fields[0].Measure.Id.Value] = view.Answer } }
        : null;
}

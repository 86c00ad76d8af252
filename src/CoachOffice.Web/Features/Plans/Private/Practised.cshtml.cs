using CoachOffice.Domain;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Lessons;
using CoachOffice.UseCases.Plans;
using CoachOffice.Web.Shell.Wording;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Plans.Private;

public sealed class PractisedModel(PlanSheet sheet, RecordCheckIn record, INewIds ids) : LinkPage
{
    internal PlanSheetView Sheet { get; private set; } = null!;

    public IReadOnlyList<Refusal> Refusals { get; private set; } = [];

    [BindProperty]
    public CheckInInput Input { get; set; } = new();

    /// <param name="pain">"yes" from the sheet's "Something hurts": the question then stands open.</param>
    public async Task<IActionResult> OnGetAsync(string? pain)
    {
        if (await Load() is { } gone) return gone;
        Input = new CheckInInput { Id = ids.Next(), On = DayEntry.Text(Sheet.Today), Pain = pain == "yes" ? "yes" : null };
        return Page();
    }

    public async Task<IActionResult> OnPostAsync()
    {
        var form = Input.ToForm();
        var done = form.Succeeded ? await record.From(form.Value, Pass) : Outcome<CheckInResult>.Refused(form.Refusals);
        if (done.TryGet(out var result)) return LocalRedirect(result.Emergency ? "/my-plan/urgent" : "/my-plan/noted");
        if (await Load() is { } gone) return gone;
        Refusals = done.Refusals;
        Response.StatusCode = StatusCodes.Status422UnprocessableEntity;
        return Page();
    }

    private async Task<IActionResult?> Load()
    {
        if (await sheet.For(Pass.PlanId) is not { } view) return NotFound();
        Sheet = view;
        return null;
    }
}

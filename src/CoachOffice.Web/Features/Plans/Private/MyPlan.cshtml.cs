using CoachOffice.UseCases.Plans;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Plans.Private;

public sealed class MyPlanModel(PlanSheet sheet, KeepIfThen keep) : LinkPage
{
    internal PlanSheetView Sheet { get; private set; } = null!;

    /// <summary>Why the sentence was not kept.</summary>
    public string? Refused { get; private set; }

    [BindProperty]
    public string? IfThen { get; set; }

    public Task<IActionResult> OnGetAsync() => Show();

    /// <summary>The student's own sentence.</summary>
    public async Task<IActionResult> OnPostAsync()
    {
        var kept = await keep.From(IfThen ?? "", Pass);
        if (kept.Succeeded) return LocalRedirect("/my-plan");
        Refused = kept.Refusals[0].Sentence;
        return await Show();
    }

    private async Task<IActionResult> Show()
    {
        if (await sheet.For(Pass.PlanId) is not { } view) return NotFound();
        Sheet = view;
        return Page();
    }
}

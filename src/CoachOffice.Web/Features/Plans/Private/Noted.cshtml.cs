using CoachOffice.UseCases.Plans;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Plans.Private;

public sealed class NotedModel(PlanSheet sheet) : LinkPage
{
    internal PlanSheetView Sheet { get; private set; } = null!;

    public async Task<IActionResult> OnGetAsync()
    {
        if (await sheet.For(Pass.PlanId) is not { } view) return NotFound();
        Sheet = view;
        return Page();
    }
}

using CoachOffice.UseCases.Rulebook;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Rulebook;

public sealed class PatternsModel(RulebookPages pages) : BookPage(pages)
{
    public async Task<IActionResult> OnGetAsync() => await Open() ?? Page();
}

using CoachOffice.UseCases.Rulebook;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Rulebook;

public sealed class LaddersModel(RulebookPages pages) : BookPage(pages)
{
    public async Task<IActionResult> OnGetAsync() => await Open() ?? Page();
}

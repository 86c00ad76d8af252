using CoachOffice.UseCases.Ledger.Reports;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Ledger;

/// <summary>What was earned in a year.</summary>
[Authorize(Policy = OfficePolicies.Own)]
public sealed class EarnedModel(EarnedPage earned) : OfficePage
{
    public EarnedView View { get; private set; } = null!;

    public async Task<IActionResult> OnGetAsync(int? year)
    {
        var found = await earned.Of(year, Actor);
        if (!found.TryGet(out var view)) return Refuse(found.Refusals);
        View = view;
        return Page();
    }
}

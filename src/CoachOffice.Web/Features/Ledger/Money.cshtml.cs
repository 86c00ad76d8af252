using CoachOffice.UseCases.Ledger.Packages;
using CoachOffice.UseCases.Ledger.Reports;
using CoachOffice.Web.Shell;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Ledger;

/// <summary>Who owes what.</summary>
public sealed class MoneyModel(MoneyPage money, PackageRows packages) : OfficePage
{
    private const int Most = 50;

    public MoneyView View { get; private set; } = null!;

    public IReadOnlyList<PackageRow> Ending { get; private set; } = [];

    public bool MayKeepBooks => Actor.MayKeepBooks;

    public async Task<IActionResult> OnGetAsync()
    {
        var found = await money.Now(Actor);
        if (!found.TryGet(out var view)) return Refuse(found.Refusals);
        View = view;
        Ending = await packages.EndingSoon(Most);
        return Page();
    }
}

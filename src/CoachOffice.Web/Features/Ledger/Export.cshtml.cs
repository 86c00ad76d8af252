using CoachOffice.UseCases;
using CoachOffice.UseCases.Ledger.Reports;
using CoachOffice.Web.Features.Students.Imports;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Security;
using CoachOffice.Web.Shell.Wording;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Ledger;

/// <summary>The ledger of a period as a file for the accountant.</summary>
[Authorize(Policy = OfficePolicies.Own)]
public sealed class ExportModel(ExportLedger export, PracticeClock clock) : OfficePage
{
    [BindProperty]
    public string? FirstDay { get; set; }

    [BindProperty]
    public string? LastDay { get; set; }

    public async Task OnGetAsync()
    {
        var last = (await clock.Today()).With(NodaTime.DateAdjusters.StartOfMonth).PlusDays(-1);
        (FirstDay, LastDay) = (DayEntry.Text(last.With(NodaTime.DateAdjusters.StartOfMonth)), DayEntry.Text(last));
    }

    public async Task<IActionResult> OnPostAsync()
    {
        if (DayEntry.Read(FirstDay) is not { } first) return Refuse([DayEntry.Refusal(nameof(FirstDay))], "");
        if (DayEntry.Read(LastDay) is not { } last) return Refuse([DayEntry.Refusal(nameof(LastDay))], "");
        var made = await export.Of(first, last, Actor);
        return made.TryGet(out var bytes) ? File(bytes, CsvAnswer.Type, $"ledger-{DayEntry.Text(first)}-{DayEntry.Text(last)}.csv") : Refuse(made.Refusals, "");
    }
}

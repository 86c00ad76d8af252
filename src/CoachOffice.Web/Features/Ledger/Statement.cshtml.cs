using CoachOffice.UseCases.Ledger;
using CoachOffice.UseCases.Ledger.Documents;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Wording;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Ledger;

/// <summary>Writes a statement of a period.</summary>
public sealed class StatementModel(PayerPage account, IssueStatement issue) : PayerFormPage(account)
{
    [BindProperty]
    public string? FirstDay { get; set; }

    [BindProperty]
    public string? LastDay { get; set; }

    public async Task<IActionResult> OnGetAsync()
    {
        if (await Look() is { } answer) return answer;
        (FirstDay, LastDay) = (DayEntry.Text(Account.Today.With(NodaTime.DateAdjusters.StartOfMonth)), DayEntry.Text(Account.Today));
        return Page();
    }

    public async Task<IActionResult> OnPostAsync()
    {
        if (await Look() is { } answer) return answer;
        if (DayEntry.Read(FirstDay) is not { } first) return Refuse([DayEntry.Refusal(nameof(FirstDay))], "");
        if (DayEntry.Read(LastDay) is not { } last) return Refuse([DayEntry.Refusal(nameof(LastDay))], "");
        var written = await issue.For(new StatementForm(Payer, first, last), Actor);
        return written.TryGet(out var id) ? LocalRedirect(OfficeLinks.To(id)) : Refuse(written.Refusals, "");
    }
}

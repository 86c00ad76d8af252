using CoachOffice.Domain;
using CoachOffice.Domain.Ledger;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Students;
using CoachOffice.UseCases.Students.Households;
using CoachOffice.Web.Shell;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Students.Households;

/// <summary>Saying who pays for a student.</summary>
public sealed class PaysModel(PaysPage page, FindStudents find, INewIds ids) : OfficePage
{
    [BindProperty(SupportsGet = true)]
    public Guid Id { get; set; }

    [BindProperty]
    public Guid Student { get; set; }

    [BindProperty]
    public string Text { get; set; } = "";

    [BindProperty]
    public PayerForm Input { get; set; } = new();

    public PaysView Shown { get; private set; } = null!;

    public IReadOnlyList<StudentRow> Found { get; private set; } = [];

    internal Guid NextId() => ids.Next();

    public async Task<IActionResult> OnGetAsync()
    {
        Input = new PayerForm { Id = ids.Next() };
        return await Look() ? Page() : NotFound();
    }

    public async Task<IActionResult> OnPostFindAsync()
    {
        if (!await Look()) return NotFound();
        Input = new PayerForm { Id = ids.Next() };
        Text = (Text ?? "").Trim();
        if (Text.Length > 0) Found = [.. (await find.Matching(Text, 1, archived: false)).Rows.Where(r => r.Id.Value != Id)];
        return Page();
    }

    public async Task<IActionResult> OnPostShareAsync([FromServices] ShareAPayer share) =>
        await After(await share.Of(StudentId.From(Student), StudentId.From(Id), Actor));

    public async Task<IActionResult> OnPostNewAsync([FromServices] LetPay let) =>
        await After(await let.For(StudentId.From(Id), PayerId.From(Input.Id), Input.Details, Actor));

    private async Task<IActionResult> After(Outcome<PayerId> outcome)
    {
        if (outcome.TryGet(out var payer)) return Done(OfficeLinks.Household(payer), "From now on this payer pays.");
        return await Look() ? Refuse(outcome.Refusals) : NotFound();
    }

    private async Task<bool> Look()
    {
        if (!(await page.Of(StudentId.From(Id))).TryGet(out var shown)) return false;
        Shown = shown;
        return true;
    }
}

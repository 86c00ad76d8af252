using CoachOffice.Domain;
using CoachOffice.Domain.Ledger;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Ledger;
using CoachOffice.UseCases.Students;
using CoachOffice.UseCases.Students.Households;
using CoachOffice.Web.Shell;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Students.Households;

/// <summary>One payer and those they pay for.</summary>
public sealed class HouseholdModel(HouseholdPage page, FindStudents find) : OfficePage
{
    [BindProperty(SupportsGet = true, Name = "payer")]
    public Guid PayerGuid { get; set; }

    [BindProperty]
    public Guid Student { get; set; }

    [BindProperty]
    public string Text { get; set; } = "";

    [BindProperty]
    public PayerForm Input { get; set; } = new();

    public HouseholdView Shown { get; private set; } = null!;

    /// <summary>Students found who are not in it yet.</summary>
    public IReadOnlyList<StudentRow> Found { get; private set; } = [];

    private PayerId Payer => PayerId.From(PayerGuid);

    public async Task<IActionResult> OnGetAsync() => await Look(fill: true) ? Page() : NotFound();

    public async Task<IActionResult> OnPostFindAsync()
    {
        if (!await Look(fill: true)) return NotFound();
        Text = (Text ?? "").Trim();
        if (Text.Length > 0) Found = [.. (await find.Matching(Text, 1, archived: false)).Rows.Where(r => Shown.Students.All(m => m.Id != r.Id))];
        return Page();
    }

    public async Task<IActionResult> OnPostPutAsync([FromServices] JoinHousehold join)
    {
        var joined = await join.The(StudentId.From(Student), Payer, Actor);
        return joined.Succeeded ? Done(OfficeLinks.Household(Payer), "Put in: this payer pays from now on.") : await Again(joined.Refusals, fill: true);
    }

    public async Task<IActionResult> OnPostTakeAsync([FromServices] LeaveHousehold leave)
    {
        var left = await leave.The(StudentId.From(Student), Actor);
        return left.Succeeded ? Done(OfficeLinks.Household(Payer), "Taken out.") : await Again(left.Refusals, fill: true);
    }

    public async Task<IActionResult> OnPostSaveAsync([FromServices] ChangePayer change)
    {
        var saved = await change.To(Payer, Input.Version, Input.Details, Actor);
        return saved.Succeeded ? Done(OfficeLinks.Household(Payer), "Saved.") : await Again(saved.Refusals, fill: false);
    }

    private async Task<IActionResult> Again(IReadOnlyList<Refusal> refusals, bool fill)
    {
        if (!await Look(fill)) return NotFound();

        // The refusals show both values of every field; the next save is made knowing them.
        if (refusals.Any(r => r.Code == Clash.Code)) Input.Version = Shown.Payer.Version;
        return Refuse(refusals);
    }

    private async Task<bool> Look(bool fill)
    {
        if (!(await page.Of(Payer)).TryGet(out var shown)) return false;
        Shown = shown;
        if (fill) Input = PayerForm.Of(shown.Payer);
        return true;
    }
}

using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Ledger;
using CoachOffice.UseCases.Students;
using CoachOffice.Web.Shell;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Ledger;

/// <summary>The way from a student to who pays for them; opened here when there is nobody yet.</summary>
public sealed class OpenModel(ReadStudent read, OpenPayer open) : OfficePage
{
    [BindProperty(SupportsGet = true)]
    public Guid Id { get; set; }

    public string StudentName { get; private set; } = "";

    public async Task<IActionResult> OnGetAsync()
    {
        if (Id == Guid.Empty || await read.Of(StudentId.From(Id)) is not { ErasedAt: null } student) return NotFound();
        StudentName = student.FullName;
        return student.PayerId is { } payer ? LocalRedirect(OfficeLinks.To(payer)) : Page();
    }

    public async Task<IActionResult> OnPostAsync()
    {
        if (Id == Guid.Empty) return NotFound();
        var opened = await open.For(StudentId.From(Id), Actor);
        return opened.TryGet(out var payer) ? LocalRedirect(OfficeLinks.To(payer)) : Refuse(opened.Refusals, "");
    }
}

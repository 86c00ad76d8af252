using CoachOffice.Domain;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Students;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Students;

[Authorize(Policy = OfficePolicies.Own)]
public sealed class EraseModel(EraseStudent erase, ReadStudent read) : OfficePage
{
    [BindProperty(SupportsGet = true)]
    public Guid Id { get; set; }

    [BindProperty]
    public string? Typed { get; set; }

    public string Name { get; private set; } = "";

    public async Task<IActionResult> OnGetAsync() => await Look() ? Page() : NotFound();

    public async Task<IActionResult> OnPostAsync()
    {
        if (!await Look()) return NotFound();
        if (StudentSearch.Fold(Typed ?? "") != StudentSearch.Fold(Name))
            return Refuse([new Refusal("erase-unconfirmed", $"Type the name exactly, {Name}, to erase this person. Nothing was erased.", nameof(Typed))], "");
        var erased = await erase.ForGood(StudentId.From(Id), Actor);
        return erased.Succeeded ? Done("/students", "The person is erased. What is left carries a pseudonym.") : Refuse(erased.Refusals, "");
    }

    private async Task<bool> Look()
    {
        var student = await read.Of(StudentId.From(Id));
        Name = student?.FullName ?? "";
        return student is { ErasedAt: null };
    }
}

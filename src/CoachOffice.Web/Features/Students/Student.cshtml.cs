using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Students;
using CoachOffice.UseCases.Students.Groups;
using CoachOffice.UseCases.Students.Households;
using CoachOffice.Web.Shell;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Students;

public sealed class StudentModel(StudentPage page, ListGroups groups, PaysPage pays, ArchiveStudent archive, RestoreStudent restore) : OfficePage
{
    [BindProperty(SupportsGet = true)]
    public Guid Id { get; set; }

    public StudentStory Story { get; private set; } = null!;

    public IReadOnlyList<GroupRow> Groups { get; private set; } = [];

    /// <summary>Who pays; null for an erased student.</summary>
    public PaysView? Pays { get; private set; }

    public bool MayTeach => Actor.MayTeach;

    public bool MayOwn => Actor.MayOwn;

    public async Task<IActionResult> OnGetAsync()
    {
        if (!await Look()) return NotFound();
        return Story.Student.MergedInto is { } there ? Done(OfficeLinks.To(there), "This record became part of the one you see.") : Page();
    }

    public async Task<IActionResult> OnPostArchiveAsync()
    {
        var archived = await archive.Now(StudentId.From(Id), Actor);
        if (archived.Succeeded) return Done("/students", "Archived: nothing is sent to this student any more.", $"/students/{Id}?handler=Restore");
        return await Look() ? Refuse(archived.Refusals) : NotFound();
    }

    public async Task<IActionResult> OnPostRestoreAsync()
    {
        var restored = await restore.Now(StudentId.From(Id), Actor);
        if (restored.Succeeded) return Done($"/students/{Id}", "Brought back.");
        return await Look() ? Refuse(restored.Refusals) : NotFound();
    }

    private async Task<bool> Look()
    {
        var found = await page.Of(StudentId.From(Id));
        if (!found.TryGet(out var story)) return false;
        Story = story;
        Groups = await groups.Of(StudentId.From(Id));
        Pays = (await pays.Of(StudentId.From(Id))).TryGet(out var paying) ? paying : null;
        return true;
    }
}

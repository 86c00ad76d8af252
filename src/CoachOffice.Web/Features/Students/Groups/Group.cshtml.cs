using CoachOffice.Domain;
using CoachOffice.Domain.Students;
using CoachOffice.Domain.Students.Groups;
using CoachOffice.UseCases.Students;
using CoachOffice.UseCases.Students.Groups;
using CoachOffice.Web.Shell;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Students.Groups;

/// <summary>One group: its members, its name.</summary>
public sealed class GroupModel(GroupPage page, FindStudents find) : OfficePage
{
    [BindProperty(SupportsGet = true)]
    public Guid Id { get; set; }

    [BindProperty]
    public Guid Student { get; set; }

    [BindProperty]
    public string? Name { get; set; }

    [BindProperty]
    public string Text { get; set; } = "";

    public GroupView Shown { get; private set; } = null!;

    /// <summary>Students found who are not in it yet.</summary>
    public IReadOnlyList<StudentRow> Found { get; private set; } = [];

    private GroupId Group => GroupId.From(Id);

    private string Here => OfficeLinks.To(Group);

    public async Task<IActionResult> OnGetAsync() => await Look() ? Page() : NotFound();

    public async Task<IActionResult> OnPostFindAsync()
    {
        if (!await Look()) return NotFound();
        Text = (Text ?? "").Trim();
        if (Text.Length > 0) Found = [.. (await find.Matching(Text, 1, archived: false)).Rows.Where(r => Shown.Members.All(m => m.Id != r.Id))];
        return Page();
    }

    public async Task<IActionResult> OnPostPutAsync([FromServices] PutIntoGroup put) =>
        await After(await put.The(StudentId.From(Student), Group, Actor), "Put in.");

    public async Task<IActionResult> OnPostTakeAsync([FromServices] TakeFromGroup take) =>
        await After(await take.The(StudentId.From(Student), Group, Actor), "Taken out.");

    public async Task<IActionResult> OnPostRenameAsync([FromServices] RenameGroup rename) =>
        await After(await rename.To(Group, Name ?? "", Actor), "Saved.");

    public async Task<IActionResult> OnPostArchiveAsync([FromServices] ArchiveGroup archive)
    {
        var archived = await archive.Now(Group, Actor);
        return archived.Succeeded ? Done(OfficeLinks.Groups, "Archived: the group keeps its members.", $"{Here}?handler=Restore") : await Again(archived.Refusals);
    }

    public async Task<IActionResult> OnPostRestoreAsync([FromServices] RestoreGroup restore) =>
        await After(await restore.Now(Group, Actor), "Brought back.");

    private async Task<IActionResult> After(Outcome<GroupId> outcome, string sentence) =>
        outcome.Succeeded ? Done(Here, sentence) : await Again(outcome.Refusals);

    private async Task<IActionResult> Again(IReadOnlyList<Refusal> refusals) => await Look() ? Refuse(refusals, "") : NotFound();

    private async Task<bool> Look()
    {
        if (!(await page.Of(Group)).TryGet(out var shown)) return false;
        Shown = shown;
        Name ??= shown.Name;
        return true;
    }
}

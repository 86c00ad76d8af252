using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Students;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Students.Merging;

/// <summary>Finding the other record of a student.</summary>
[Authorize(OfficePolicies.Teach)]
public sealed class PickModel(ReadStudent read, FindStudents find) : OfficePage
{
    [BindProperty(SupportsGet = true)]
    public Guid Id { get; set; }

    [BindProperty]
    public Guid Student { get; set; }

    [BindProperty]
    public string Text { get; set; } = "";

    public string Name { get; private set; } = "";

    public IReadOnlyList<StudentRow> Found { get; private set; } = [];

    public async Task<IActionResult> OnGetAsync() => await Look() ? Page() : NotFound();

    public async Task<IActionResult> OnPostFindAsync()
    {
        if (!await Look()) return NotFound();
        Text = (Text ?? "").Trim();
        if (Text.Length == 0) return Page();
        var here = await find.Matching(Text, 1, archived: false);
        var away = await find.Matching(Text, 1, archived: true);
        Found = [.. here.Rows.Concat(away.Rows).Where(r => r.Id.Value != Id)];
        return Page();
    }

    public IActionResult OnPostSee() => LocalRedirect(OfficeLinks.Merge(StudentId.From(Id), StudentId.From(Student)));

    private async Task<bool> Look()
    {
        var student = await read.Of(StudentId.From(Id));
        Name = student?.FullName ?? "";
        return student is { ErasedAt: null };
    }
}

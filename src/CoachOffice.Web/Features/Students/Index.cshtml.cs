using CoachOffice.Domain.Students.Groups;
using CoachOffice.UseCases.Students;
using CoachOffice.UseCases.Students.Groups;
using CoachOffice.Web.Shell;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;

namespace CoachOffice.Web.Features.Students;

/// <summary>The list, and the search in it. Searches are posted, so that no name lands in an address.</summary>
public sealed class IndexModel(FindStudents find, ListGroups groups) : OfficePage
{
    [BindProperty(SupportsGet = true)]
    public bool Archived { get; set; }

    /// <summary>Narrows the list down to one group.</summary>
    [BindProperty(SupportsGet = true)]
    public Guid? Group { get; set; }

    [BindProperty]
    public string Text { get; set; } = "";

    public bool MayOwn => Actor.MayOwn;

    public bool MayTeach => Actor.MayTeach;

    public StudentList Found { get; private set; } = null!;

    public IReadOnlyList<GroupRow> Groups { get; private set; } = [];

    /// <summary>Name of the group the list is narrowed down to, or null.</summary>
    public string? GroupName => Groups.FirstOrDefault(g => g.Id.Value == Group)?.Name;

    /// <summary>The list's own address, as narrowed down.</summary>
    public string Here => (Archived, Group) switch
    {
        (true, { } group) => $"/students?archived=true&group={group}",
        (true, null) => "/students?archived=true",
        (false, { } group) => $"/students?group={group}",
        _ => "/students",
    };

    private StudentsWithin? Within => Group is { } group ? new StudentsWithin { Group = GroupId.From(group) } : null;

    public async Task<IActionResult> OnGetAsync([FromQuery(Name = "page")] int page = 1)
    {
        Found = await find.Matching("", page, Archived, Within);
        // Beyond the end of the list nothing stands; "no students yet" would be untrue there.
        if (Found.Rows.Count == 0 && Found.Page > 1) return LocalRedirect(Here);
        Groups = await groups.Now(archived: false);
        return Page();
    }

    public async Task<IActionResult> OnPostAsync()
    {
        Text = (Text ?? "").Trim();
        Found = await find.Matching(Text, 1, Archived, Within);
        Groups = await groups.Now(archived: false);
        return Request.Headers.ContainsKey("X-Part") ? Partial("_Rows", this) : Page();
    }
}

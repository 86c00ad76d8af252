using CoachOffice.UseCases.Students;
using CoachOffice.Web.Shell;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;

namespace CoachOffice.Web.Features.Students;

/// <summary>The list, and the search in it. Searches are posted, so that no name lands in an address.</summary>
public sealed class IndexModel(FindStudents find) : OfficePage
{
    [BindProperty(SupportsGet = true)]
    public bool Archived { get; set; }

    [BindProperty]
    public string Text { get; set; } = "";

    public StudentList Found { get; private set; } = null!;

    public async Task<IActionResult> OnGetAsync([FromQuery(Name = "page")] int page = 1)
    {
        Found = await find.Matching("", page, Archived);
        // Beyond the end of the list nothing stands; "no students yet" would be untrue there.
        if (Found.Rows.Count == 0 && Found.Page > 1) return LocalRedirect(Archived ? "/students?archived=true" : "/students");
        return Page();
    }

    public async Task<IActionResult> OnPostAsync()
    {
        Text = (Text ?? "").Trim();
        Found = await find.Matching(Text, 1, Archived);
        return Request.Headers.ContainsKey("X-Part") ? Partial("_Rows", this) : Page();
    }
}

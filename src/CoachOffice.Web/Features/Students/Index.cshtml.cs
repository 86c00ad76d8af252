using CoachOffice.Domain.Ledger;
using CoachOffice.Domain.Students.Groups;
using CoachOffice.UseCases.Students;
using CoachOffice.UseCases.Students.Groups;
using CoachOffice.UseCases.Students.Households;
using CoachOffice.Web.Shell;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;

namespace CoachOffice.Web.Features.Students;

/// <summary>The list, and the search in it. Searches are posted, so that no name lands in an address.</summary>
public sealed class IndexModel(FindStudents find, ListGroups groups, HouseholdPage households) : OfficePage
{
    [BindProperty(SupportsGet = true)]
    public bool Archived { get; set; }

    /// <summary>Narrows the list down to one group.</summary>
    [BindProperty(SupportsGet = true)]
    public Guid? Group { get; set; }

    /// <summary>Narrows the list down to those one payer pays for.</summary>
    [BindProperty(SupportsGet = true)]
    public Guid? Household { get; set; }

    [BindProperty]
    public string Text { get; set; } = "";

    public bool MayOwn => Actor.MayOwn;

    public bool MayTeach => Actor.MayTeach;

    public StudentList Found { get; private set; } = null!;

    public IReadOnlyList<GroupRow> Groups { get; private set; } = [];

    /// <summary>Name of the group the list is narrowed down to, or null.</summary>
    public string? GroupName => Groups.FirstOrDefault(g => g.Id.Value == Group)?.Name;

    /// <summary>Name of the payer the list is narrowed down to, or null.</summary>
    public string? HouseholdName { get; private set; }

    /// <summary>The list's own address, as narrowed down.</summary>
    public string Here => At(Group, Household);

    private StudentsWithin Within => new() { Group = Group is { } group ? GroupId.From(group) : null, Payer = Household is { } payer ? PayerId.From(payer) : null };

    /// <summary>The list's address, narrowed down otherwise.</summary>
    public string At(Guid? group, Guid? household)
    {
        string?[] parts = [Archived ? "archived=true" : null, group is { } g ? $"group={g}" : null, household is { } h ? $"household={h}" : null];
        var asked = string.Join('&', parts.Where(p => p is not null));
        return asked.Length > 0 ? $"/students?{asked}" : "/students";
    }

    public async Task<IActionResult> OnGetAsync([FromQuery(Name = "page")] int page = 1)
    {
        Found = await find.Matching("", page, Archived, Within);
        // Beyond the end of the list nothing stands; "no students yet" would be untrue there.
        if (Found.Rows.Count == 0 && Found.Page > 1) return LocalRedirect(Here);
        await NarrowDown();
        return Page();
    }

    public async Task<IActionResult> OnPostAsync()
    {
        Text = (Text ?? "").Trim();
        Found = await find.Matching(Text, 1, Archived, Within);
        var part = Request.Headers.ContainsKey("X-Part");

        // While somebody types, the rows alone are asked for; they name what they are narrowed down to.
        if (!part || Group is not null || Household is not null) await NarrowDown();
        return part ? Partial("_Rows", this) : Page();
    }

    private async Task NarrowDown()
    {
        Groups = await groups.Now(archived: false);
        if (Household is { } payer && (await households.Of(PayerId.From(payer))).TryGet(out var household)) HouseholdName = household.Payer.Name;
    }
}

using CoachOffice.Domain;
using CoachOffice.Domain.Students.Groups;
using CoachOffice.UseCases.Students.Groups;
using CoachOffice.Web.Shell;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Students.Groups;

/// <summary>All groups, and a new one.</summary>
public sealed class IndexModel(ListGroups list, MakeGroup make, INewIds ids) : OfficePage
{
    [BindProperty(SupportsGet = true)]
    public bool Archived { get; set; }

    /// <summary>Made with the empty form; sending the same form twice makes one group.</summary>
    [BindProperty]
    public Guid NewId { get; set; }

    [BindProperty]
    public string? Name { get; set; }

    public IReadOnlyList<GroupRow> Rows { get; private set; } = [];

    public async Task OnGetAsync()
    {
        NewId = ids.Next();
        Rows = await list.Now(Archived);
    }

    public async Task<IActionResult> OnPostAsync()
    {
        var made = await make.Named(GroupId.From(NewId), Name ?? "", Actor);
        if (made.TryGet(out var id)) return Done(OfficeLinks.To(id), "The group is made: now put students into it.");
        Rows = await list.Now(Archived);
        return Refuse(made.Refusals, "");
    }
}

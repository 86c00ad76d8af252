using CoachOffice.UseCases.Students.Imports;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Students.Imports;

/// <summary>What the columns of a list hold.</summary>
public sealed class ColumnsModel(ReadStudentColumns read, SayStudentColumns say) : ListPage
{
    internal StudentColumnsView View { get; private set; } = null!;

    /// <summary>As said before, or as sent.</summary>
    internal StudentColumnsForm Said { get; private set; } = new();

    internal string? Refused(string field) => Refusals.FirstOrDefault(r => r.Field == field)?.Sentence;

    public async Task<IActionResult> OnGetAsync()
    {
        var looked = await read.Of(FileId, Actor);
        if (!looked.TryGet(out var view)) return Refuse(looked.Refusals, "");
        (View, Said) = (view, view.Form);
        return Page();
    }

    public async Task<IActionResult> OnPostAsync()
    {
        var looked = await read.Of(FileId, Actor);
        if (!looked.TryGet(out var view)) return Refuse(looked.Refusals, "");
        (View, Said) = (view, Sent(view));
        var said = await say.Of(FileId, Said, Actor);
        return said.Succeeded ? LocalRedirect(Here) : Refuse(said.Refusals, "");
    }

    private StudentColumnsForm Sent(StudentColumnsView view) => new()
    {
        Fields = view.Columns.ToDictionary(c => c.Index, c => Text($"field[{c.Index}]")),
        NameOrder = Text("name-order"),
        DayOrder = Text("day-order"),
        WhenThere = Text("when-there"),
        SharedMail = Text("shared-mail"),
    };

    private string Text(string name) => Request.Form[name].ToString().Trim();
}

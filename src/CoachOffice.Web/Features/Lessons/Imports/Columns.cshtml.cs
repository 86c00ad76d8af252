using CoachOffice.Domain;
using CoachOffice.UseCases.Lessons.Imports;
using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Lessons.Imports;

/// <summary>What the columns of a file hold.</summary>
[Authorize(OfficePolicies.Teach)]
public sealed class ColumnsModel(ReadColumns read, SayColumns say) : ImportPage
{
    internal ColumnsView View { get; private set; } = null!;

    /// <summary>As said before, or as sent.</summary>
    internal ColumnsForm Said { get; private set; } = new();

    internal string? Refused(string field) => Refusals.FirstOrDefault(r => r.Field == field)?.Sentence;

    public async Task<IActionResult> OnGetAsync()
    {
        var looked = await read.Of(Student, FileId, Actor);
        if (!looked.TryGet(out var view)) return Gone(looked.Refusals);
        (View, Said) = (view, view.Form);
        return Page();
    }

    public async Task<IActionResult> OnPostAsync()
    {
        var looked = await read.Of(Student, FileId, Actor);
        if (!looked.TryGet(out var view)) return Gone(looked.Refusals);
        (View, Said) = (view, SentColumns.From(Request.Form, view));
        var said = await say.Of(Student, FileId, Said, Actor);
        return said.Succeeded ? LocalRedirect(Here) : Refuse(said.Refusals, "");
    }

    private IActionResult Gone(IReadOnlyList<Refusal> refusals) =>
        refusals[0].Code == "student-archived" ? LocalRedirect(Files) : Refuse(refusals, "");
}

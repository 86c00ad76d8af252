using CoachOffice.Domain;
using CoachOffice.Domain.Students.Imports;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Students;
using CoachOffice.UseCases.Students.Imports;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Students.Imports;

/// <summary>One list: every row before it is brought in, and what came of it.</summary>
public sealed class ListModel(StudentFileDoor door, PreviewStudentFile preview, StudentFileStore store, FindStudents find) : ListPage
{
    [BindProperty(SupportsGet = true)]
    public string? Fate { get; set; }

    internal StudentFile? Kept { get; private set; }

    /// <summary>Null once it is brought in.</summary>
    internal StudentFileView? View { get; private set; }

    /// <summary>Who was brought, or who stayed when it was taken back.</summary>
    internal StudentList Students { get; private set; } = new([], 0, 1);

    internal bool HasRefused => Kept is { UndoneAt: null, Outcome.Refused: > 0 } && store.Has(FileId);

    public async Task<IActionResult> OnGetAsync([FromQuery(Name = "page")] int page = 1) => await Look(page) ?? Page();

    public async Task<IActionResult> OnPostBringAsync([FromServices] BringStudents bring)
    {
        var brought = await bring.Of(FileId, Actor);
        return brought.Succeeded ? LocalRedirect(Here) : await Again(brought.Refusals);
    }

    public async Task<IActionResult> OnPostUndoAsync([FromServices] UndoStudentFile undo)
    {
        var undone = await undo.Of(FileId, Actor);
        if (!undone.TryGet(out var what)) return await Again(undone.Refusals);
        return Done(Here, $"Taken back: {what.Removed} removed, {what.Emptied} emptied again, {what.Stayed} stayed.");
    }

    public async Task<IActionResult> OnPostDropAsync([FromServices] DropStudentFile drop)
    {
        var dropped = await drop.Of(FileId, Actor);
        return dropped.Succeeded ? Done(Shell.OfficeLinks.BringStudents, "The list is dropped; nobody of it was brought in.") : await Again(dropped.Refusals);
    }

    public async Task<IActionResult> OnPostRefusedAsync([FromServices] RefusedStudentRows refused)
    {
        var rows = await refused.Of(FileId, Actor);
        return rows.TryGet(out var bytes) ? File(bytes, CsvAnswer.Type, "refused-rows.csv") : await Again(rows.Refusals);
    }

    private async Task<IActionResult> Again(IReadOnlyList<Refusal> refusals)
    {
        if (refusals.Any(r => r.Code.EndsWith("not-found", StringComparison.Ordinal) || r.Code == NotAllowed.Code)) return Refuse(refusals, "");
        return await Look(1) ?? Refuse(refusals, "");
    }

    // Null when there is a page to show.
    private async Task<IActionResult?> Look(int page)
    {
        var found = await door.Find(FileId, Actor);
        if (!found.TryGet(out var file)) return Refuse(found.Refusals, "");
        Kept = file;
        if (!file.IsOpen)
        {
            Students = await find.Matching("", page, archived: false, new StudentsWithin { List = FileId });
            return null;
        }

        var looked = await preview.Of(FileId, Terms.TryParse<RowFate>(Fate, out var fate) ? fate : null, page, Actor);
        if (looked.TryGet(out var view)) View = view;
        else return looked.Refusals[0].Code == "columns-unsaid" ? LocalRedirect(Here + "/columns") : Refuse(looked.Refusals, "");
        return null;
    }
}

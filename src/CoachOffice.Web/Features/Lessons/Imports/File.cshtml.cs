using CoachOffice.Domain;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Lessons.Imports;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Lessons.Imports;
using CoachOffice.Web.Shell.Security;
using CoachOffice.Web.Shell.Wording;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Lessons.Imports;

/// <summary>One file: what would be kept, how far it is, what was kept.</summary>
[Authorize(OfficePolicies.Teach)]
public sealed class FileModel(DeviceFileDoor door, PreviewDeviceFile preview, WatchImport watch, ReadPractice practice) : ImportPage
{
    private const string IntoField = "into[";

    internal DeviceFile? Kept { get; private set; }

    /// <summary>Null while it runs and once it is imported.</summary>
    internal DeviceFileView? View { get; private set; }

    internal ImportProgress? Progress { get; private set; }

    internal UnitText Units { get; private set; } = UnitText.Metric;

    internal bool IsRunning => Progress?.State == ImportState.Running;

    public async Task<IActionResult> OnGetAsync()
    {
        var looked = await Look();
        // Without script the page looks again by itself while something is under way.
        if (IsRunning) Response.Headers["Refresh"] = "2";
        return looked ?? Page();
    }

    public async Task<IActionResult> OnPostAsync([FromServices] BeginImport begin)
    {
        var begun = await begin.Of(new ImportOrder(Student, FileId, Into(), Actor));
        return begun.Succeeded ? LocalRedirect(Here) : await Again(begun.Refusals);
    }

    public async Task<IActionResult> OnPostStopAsync([FromServices] StopImport stop)
    {
        var stopped = await stop.Of(Student, FileId, Actor);
        return stopped.Succeeded ? LocalRedirect(Here) : await Again(stopped.Refusals);
    }

    public async Task<IActionResult> OnPostDropAsync([FromServices] DropDeviceFile drop)
    {
        var dropped = await drop.Of(Student, FileId, Actor);
        return dropped.Succeeded ? Done(Files, "The file is dropped; nothing of it was kept.") : await Again(dropped.Refusals);
    }

    private async Task<IActionResult> Again(IReadOnlyList<Refusal> refusals)
    {
        if (refusals.Any(r => r.Code.EndsWith("not-found", StringComparison.Ordinal) || r.Code == NotAllowed.Code)) return Refuse(refusals, "");
        return await Look() ?? Refuse(refusals, "");
    }

    // Null when there is a page to show.
    private async Task<IActionResult?> Look()
    {
        Progress = (await watch.Of(Student, FileId, Actor)).TryGet(out var progress) ? progress : null;
        var found = await door.Find(Student, FileId, Actor);
        if (!found.TryGet(out var file)) return Refuse(found.Refusals, "");
        (Kept, Units) = (file, UnitText.Of(await practice.Now()));
        if (!file.IsOpen || IsRunning) return null;
        var looked = await preview.Of(Student, FileId, Actor);
        if (looked.TryGet(out var view)) View = view;
        else return looked.Refusals[0].Code switch { "columns-unsaid" => LocalRedirect(Here + "/columns"), "student-archived" => LocalRedirect(Files), _ => Refuse(looked.Refusals, "") };
        return null;
    }

    private Dictionary<string, LessonId> Into()
    {
        var into = new Dictionary<string, LessonId>(StringComparer.Ordinal);
        foreach (var (name, value) in Request.Form)
        {
            if (name.StartsWith(IntoField, StringComparison.Ordinal) && Guid.TryParse(value, out var lesson)) into[name[IntoField.Length..^1]] = LessonId.From(lesson);
        }

        return into;
    }
}

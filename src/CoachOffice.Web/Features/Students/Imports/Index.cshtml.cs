using CoachOffice.Domain;
using CoachOffice.UseCases.Students.Imports;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.RateLimiting;

namespace CoachOffice.Web.Features.Students.Imports;

/// <summary>Lists of students: brought here, listed here.</summary>
[EnableRateLimiting(RateLimits.Uploads)]
[RequestSizeLimit(MostBytes)]
[RequestFormLimits(MultipartBodyLengthLimit = MostBytes)]
public sealed class IndexModel(OpenStudentFile open, ListStudentFiles list) : OfficePage
{
    // The form around the file takes a little.
    private const int MostBytes = StudentFileStore.MostBytes + 64 * 1024;

    internal IReadOnlyList<StudentFileRow> Rows { get; private set; } = [];

    public async Task OnGetAsync() => await Look();

    public async Task<IActionResult> OnPostAsync(IFormFile? file)
    {
        if (file is null) return await Again([new("file-missing", "Choose a CSV file first.", nameof(file))]);
        await using var content = file.OpenReadStream();
        var opened = await open.Of(file.FileName, content, Actor);
        if (!opened.TryGet(out var kept)) return await Again(opened.Refusals);
        return LocalRedirect($"{OfficeLinks.StudentList(kept.Id)}{(kept.Columns is null ? "/columns" : "")}");
    }

    private async Task<IActionResult> Again(IReadOnlyList<Refusal> refusals)
    {
        await Look();
        return Refuse(refusals, "");
    }

    private async Task Look() => Rows = (await list.Now(Actor)).TryGet(out var rows) ? rows : [];
}

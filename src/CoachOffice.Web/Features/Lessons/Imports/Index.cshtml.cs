using CoachOffice.Domain;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Lessons.Imports;
using CoachOffice.UseCases.Students;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.RateLimiting;

namespace CoachOffice.Web.Features.Lessons.Imports;

/// <summary>Files of launch monitors at a student: brought here, listed here.</summary>
[Authorize(OfficePolicies.Teach)]
[EnableRateLimiting(RateLimits.Uploads)]
[RequestSizeLimit(MostBytes)]
[RequestFormLimits(MultipartBodyLengthLimit = MostBytes)]
public sealed class IndexModel(OpenDeviceFile open, ListDeviceFiles list, ReadStudent read) : OfficePage
{
    // The form around the file takes a little.
    private const int MostBytes = DeviceFileStore.MostBytes + 64 * 1024;

    [BindProperty(SupportsGet = true)]
    public Guid Id { get; set; }

    internal string Name { get; private set; } = "";

    internal bool IsArchived { get; private set; }

    internal IReadOnlyList<DeviceFileRow> Rows { get; private set; } = [];

    public async Task<IActionResult> OnGetAsync() => await Look() ? Page() : NotFound();

    public async Task<IActionResult> OnPostAsync(IFormFile? file)
    {
        if (file is null) return await Again([new("file-missing", "Choose a CSV file first.", nameof(file))]);
        await using var content = file.OpenReadStream();
        var opened = await open.For(StudentId.From(Id), file.FileName, content, Actor);
        if (!opened.TryGet(out var kept)) return await Again(opened.Refusals);
        return LocalRedirect($"/students/{Id}/radar/{kept.Id}{(kept.Answers is null ? "/columns" : "")}");
    }

    private async Task<IActionResult> Again(IReadOnlyList<Refusal> refusals) => await Look() ? Refuse(refusals, "") : NotFound();

    private async Task<bool> Look()
    {
        if (await read.Of(StudentId.From(Id)) is not { ErasedAt: null } student) return false;
        (Name, IsArchived) = (student.FullName, student.ArchivedAt is not null);
        Rows = (await list.Of(StudentId.From(Id), Actor)).TryGet(out var rows) ? rows : [];
        return true;
    }
}

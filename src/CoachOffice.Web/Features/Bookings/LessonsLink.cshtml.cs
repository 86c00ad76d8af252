using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Students;
using CoachOffice.Web.Shell;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Bookings;

/// <summary>Links to a student's own lessons: handed out, ended.</summary>
public sealed class LessonsLinkModel(ReadStudent read, IssueVisitLink issue, RevokeVisitLinks revoke) : OfficePage
{
    [BindProperty(SupportsGet = true)]
    public Guid Id { get; set; }

    public string Name { get; private set; } = "";

    /// <summary>Shown once, right after it was made.</summary>
    public Uri? Address { get; private set; }

    public async Task<IActionResult> OnGetAsync() => await Look() ? Page() : NotFound();

    public async Task<IActionResult> OnPostMakeAsync()
    {
        if (!await Look()) return NotFound();
        var made = await issue.For(StudentId.From(Id), Actor);
        if (!made.TryGet(out var address)) return Refuse(made.Refusals, "");
        Address = address;
        return Page();
    }

    public async Task<IActionResult> OnPostEndAsync()
    {
        var ended = await revoke.Of(StudentId.From(Id), Actor);
        if (!ended.TryGet(out var count)) return Refuse(ended.Refusals, "");
        return Done($"/students/{Id}/lessons-link", count == 1 ? "One link has ended." : $"{count} links have ended.");
    }

    private async Task<bool> Look()
    {
        if (await read.Of(StudentId.From(Id)) is not { ErasedAt: null } student) return false;
        Name = student.FullName;
        return true;
    }
}

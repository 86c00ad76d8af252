using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using CoachOffice.Web.Shell;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Bookings;

/// <summary>The private link to a student's lessons: made, shown once, ended.</summary>
public sealed class VisitLinkModel(ReadVisitLinks read, IssueVisitLink issue, RevokeVisitLinks revoke) : OfficePage
{
    private const string Made = "visit-link";

    [BindProperty(SupportsGet = true)]
    public Guid Id { get; set; }

    public VisitLinksView View { get; private set; } = null!;

    /// <summary>The link that was just made.</summary>
    public string? Link { get; private set; }

    internal StudentId Student => StudentId.From(Id);

    private string Here => $"{OfficeLinks.To(Student)}/lessons-link";

    public async Task<IActionResult> OnGetAsync()
    {
        if (await read.Of(Student) is not { } view) return NotFound();
        (View, Link) = (view, TempData[Made] as string);
        return Page();
    }

    public async Task<IActionResult> OnPostAsync()
    {
        var made = await issue.For(Student, Actor);
        if (!made.TryGet(out var link)) return await Refused(made.Refusals);
        TempData[Made] = link.ToString();
        return LocalRedirect(Here);
    }

    public async Task<IActionResult> OnPostRevokeAsync()
    {
        var revoked = await revoke.Of(Student, Actor);
        return revoked.Succeeded ? Done(Here, "All links are ended; whoever used one has to be given a new one.") : await Refused(revoked.Refusals);
    }

    private async Task<IActionResult> Refused(IReadOnlyList<Domain.Refusal> refusals)
    {
        if (await read.Of(Student) is not { } view) return NotFound();
        View = view;
        return Refuse(refusals);
    }
}

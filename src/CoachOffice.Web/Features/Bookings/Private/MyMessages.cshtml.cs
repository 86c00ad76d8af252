using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases;
using CoachOffice.UseCases.FollowUps;
using CoachOffice.Web.Features.FollowUps;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Bookings.Private;

/// <summary>How messages reach a student, chosen by themselves; a minor's by the guardian, who holds the link.</summary>
public sealed class MyMessagesModel(ReadReach read, KeepContact keep, PracticeClock clock) : VisitPage
{
    private const int ShownDigits = 2;

    public ReachView View { get; private set; } = null!;

    /// <summary>The last digits of the number texts would go to, or null.</summary>
    public string? Number { get; private set; }

    public bool Kept { get; private set; }

    public IReadOnlyList<Refusal> Refusals { get; private set; } = [];

    [BindProperty]
    public ContactFields Contact { get; set; } = new();

    public async Task<IActionResult> OnGetAsync(string? kept)
    {
        if (!await Look()) return NotFound();
        (Contact, Kept) = (ContactFields.Of(View.Student.Contact), kept is not null);
        return Page();
    }

    public async Task<IActionResult> OnPostAsync()
    {
        var typed = Contact.Read();
        var done = typed.TryGet(out var wishes) ? await keep.For(Pass.StudentId, wishes, Actor.Student) : Outcome<StudentId>.Refused(typed.Refusals);
        if (done.Succeeded) return LocalRedirect("/my-lessons/messages?kept=yes");
        if (!await Look()) return NotFound();
        Refusals = done.Refusals;
        Response.StatusCode = StatusCodes.Status422UnprocessableEntity;
        return Page();
    }

    private async Task<bool> Look()
    {
        if (await read.Of(Pass.StudentId) is not { } view) return false;
        View = view;
        Number = view.Student.TextNumberOn(await clock.Today()) is { } number ? number[^ShownDigits..] : null;
        return true;
    }
}

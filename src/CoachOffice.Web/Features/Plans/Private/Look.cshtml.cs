using CoachOffice.Domain;
using CoachOffice.UseCases;
using CoachOffice.UseCases.Measuring.Answers;
using CoachOffice.Web.Shell.Wording;
using Microsoft.AspNetCore.Mvc;
using NodaTime;

namespace CoachOffice.Web.Features.Plans.Private;

/// <summary>A student answers a re-test with readings of their own; a coach looks at them before anything is judged.</summary>
public sealed class LookModel(ReadMyLooks read, AnswerRetest answer, PracticeClock clock) : LinkPage
{
    public IReadOnlyList<MyLook> Looks { get; private set; } = [];

    public IReadOnlyList<Refusal> Refusals { get; private set; } = [];

    internal LocalDate Today { get; private set; }

    [BindProperty]
    public Guid Id { get; set; }

    [BindProperty]
    public string? Readings { get; set; }

    [BindProperty]
    public string? On { get; set; }

    public async Task<IActionResult> OnGetAsync() => await Load() ?? Page();

    public async Task<IActionResult> OnPostAsync()
    {
        var done = DayEntry.Read(On) is { } day ? await answer.From(new RetestAnswer(Id, Readings ?? "", day), Pass) : DayEntry.Refusal(nameof(On));
        if (done.Succeeded) return LocalRedirect("/my-plan/look");
        if (await Load() is { } gone) return gone;
        Refusals = done.Refusals;
        Response.StatusCode = StatusCodes.Status422UnprocessableEntity;
        return Page();
    }

    private async Task<IActionResult?> Load()
    {
        if (await read.For(Pass) is not { } looks) return NotFound();
        (Looks, Today) = (looks, await clock.Today());
        return null;
    }
}

using CoachOffice.Domain;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases;
using CoachOffice.UseCases.Media;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Wording;
using Microsoft.AspNetCore.Mvc;
using NodaTime;

namespace CoachOffice.Web.Features.Media;

public sealed class ConsentModel(ConsentPage page, GiveMediaConsent give, WithdrawMediaConsent withdraw, RemoveMediaOf remove, PracticeClock clock) : OfficePage
{
    [BindProperty]
    public ConsentFields Input { get; set; } = new();

    public ConsentView View { get; private set; } = null!;

    public DateTimeZone Zone { get; private set; } = DateTimeZone.Utc;

    public bool MayTeach => Actor.MayTeach;

    public async Task<IActionResult> OnGetAsync(Guid id)
    {
        if (!await Look(id)) return NotFound();
        Input = new ConsentFields { GivenBy = View.IsMinor ? View.Student.Guardian?.Name : View.Student.FullName, GivenOn = DayEntry.Text(await clock.Today()) };
        return Page();
    }

    public async Task<IActionResult> OnPostAsync(Guid id)
    {
        if (DayEntry.Read(Input.GivenOn) is not { } day) return await Again(id, [DayEntry.Refusal(nameof(Input.GivenOn))]);
        var given = await give.For(StudentId.From(id), new ConsentForm(Input.GivenBy ?? "", day), Actor);
        return given.Succeeded ? Done($"/students/{id}/media-consent", "Consent is recorded.") : await Again(id, given.Refusals);
    }

    public async Task<IActionResult> OnPostWithdrawAsync(Guid id)
    {
        var withdrawn = await withdraw.Of(StudentId.From(id), Actor);
        return withdrawn.Succeeded ? Done($"/students/{id}/media-consent", "Written down: stills and clips are no longer shown.") : await Again(id, withdrawn.Refusals);
    }

    public async Task<IActionResult> OnPostRemoveAsync(Guid id)
    {
        var removed = await remove.ForGood(StudentId.From(id), Actor);
        return removed.TryGet(out var count) ? Done($"/students/{id}/media-consent", count == 1 ? "One is removed for good." : $"{count} are removed for good.") : await Again(id, removed.Refusals);
    }

    private async Task<IActionResult> Again(Guid id, IReadOnlyList<Refusal> refusals) => await Look(id) ? Refuse(refusals) : NotFound();

    private async Task<bool> Look(Guid id)
    {
        if (await page.Of(StudentId.From(id)) is not { } view) return false;
        (View, Zone) = (view, await clock.Zone());
        return true;
    }
}

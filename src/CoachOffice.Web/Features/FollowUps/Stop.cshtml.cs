using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.FollowUps;
using CoachOffice.UseCases.FollowUps;
using CoachOffice.Web.Features.Plans.Private;
using Problems = CoachOffice.Web.Features.Problem.Problems;
using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using Microsoft.AspNetCore.RateLimiting;

namespace CoachOffice.Web.Features.FollowUps;

/// <summary>Stops messages, each purpose apart. Mail programs post here on their own (RFC 8058) with no cookie and no proof of origin; the token in the address is the proof.</summary>
[IgnoreAntiforgeryToken]
[EnableRateLimiting(RateLimits.Links)]
public sealed class StopModel(StopPage page, StopMessages stop, AskForMessages ask, WithdrawGuardian withdraw) : PageModel
{
    public StopPass Pass { get; private set; } = null!;

    /// <summary>The purpose spoken of first.</summary>
    public MessagePurpose Asked { get; private set; }

    public string? Refused { get; private set; }

    public async Task<IActionResult> OnGetAsync(string token) => await Show(token, null);

    /// <summary>A bare post stops what the mail was for; the page's own buttons name a purpose.</summary>
    public async Task<IActionResult> OnPostAsync(string token, string? what)
    {
        if (what is not null && !Terms.TryParse<MessagePurpose>(what, out _)) return await Show(token, null, "Pick one of the kinds of messages on this page.");
        var purpose = what is null ? (MessagePurpose?)null : Terms.Parse<MessagePurpose>(what);
        return await After(token, purpose, await stop.By(token, purpose));
    }

    public async Task<IActionResult> OnPostAskAsync(string token, string? what) =>
        Terms.TryParse<MessagePurpose>(what, out var purpose) ? await After(token, purpose, await ask.By(token, purpose)) : await Show(token, null, "Pick one of the kinds of messages on this page.");

    public async Task<IActionResult> OnPostWithdrawAsync(string token)
    {
        if (await page.Of(token) is not { } pass) return Closed();
        var withdrawn = await withdraw.Of(pass.StudentId, Actor.Student);
        return await Show(token, null, withdrawn.Succeeded ? null : withdrawn.Refusals[0].Sentence);
    }

    private async Task<IActionResult> After(string token, MessagePurpose? purpose, Outcome<StopPass> outcome) =>
        await Show(token, purpose, outcome.Succeeded ? null : outcome.Refusals[0].Sentence);

    private async Task<IActionResult> Show(string token, MessagePurpose? asked, string? refused = null)
    {
        if (await page.Of(token) is not { } pass) return Closed();
        (Pass, Refused) = (pass, refused);
        Asked = asked is { } named && MessagePurposes.OfStudents.Contains(named) ? named : pass.Purpose;
        if (refused is not null) Response.StatusCode = StatusCodes.Status422UnprocessableEntity;
        return Page();
    }

    private NotFoundResult Closed()
    {
        Problems.Explain(HttpContext, LinkDoor.Closed);
        return NotFound();
    }
}

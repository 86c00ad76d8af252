using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.UseCases.Access;
using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.ModelBinding;
using Microsoft.AspNetCore.Mvc.RazorPages;

namespace CoachOffice.Web.Shell;

/// <summary>What every page of the office does alike: who acts, how a refusal is shown, how a success is said.</summary>
public abstract class OfficePage : PageModel
{
    /// <summary>What was refused in this request.</summary>
    public IReadOnlyList<Refusal> Refusals { get; private set; } = [];

    /// <summary>The signed-in person.</summary>
    protected Actor Actor => User.AsActor();

    /// <summary>Shows the page again with every sentence, and everything as typed. Unknown things become 404, rights 403, clashes 409.</summary>
    protected IActionResult Refuse(IReadOnlyList<Refusal> refusals, string prefix = "Input.")
    {
        ArgumentNullException.ThrowIfNull(refusals);
        if (refusals.Any(r => r.Code.EndsWith("not-found", StringComparison.Ordinal))) return NotFound();
        if (refusals.Any(r => r.Code == NotAllowed.Code)) return StatusCode(StatusCodes.Status403Forbidden);
        Refusals = refusals;
        foreach (var refusal in refusals) Note(prefix, refusal);
        Response.StatusCode = refusals.Any(r => r.Code == Clash.Code) ? StatusCodes.Status409Conflict : StatusCodes.Status422UnprocessableEntity;
        return Page();
    }

    /// <summary>One refusal.</summary>
    protected IActionResult Refuse(Refusal refusal) => Refuse([refusal]);

    /// <summary>Goes on to a page of ours and says there what was done.</summary>
    protected IActionResult Done(string address, string sentence, string? undo = null)
    {
        TempData.Leave(new Notice(sentence, undo));
        return LocalRedirect(address);
    }

    /// <summary>Where to go on after signing in: a page of ours, written as an address can be; anything else is Today.</summary>
    protected string Onward(string? next) => Url.IsLocalUrl(next) && next!.All(char.IsAscii) ? next! : "/";

    private void Note(string prefix, Refusal refusal)
    {
        if (refusal.Field is null) return;
        var key = prefix + refusal.Field;
        ModelState.TryAddModelError(key, refusal.Sentence);
        // The model's own text is shown where the binder met nothing.
        if (ModelState[key] is { AttemptedValue: null, ValidationState: ModelValidationState.Unvalidated } entry) entry.ValidationState = ModelValidationState.Invalid;
    }
}

using System.Globalization;
using CoachOffice.Domain;
using CoachOffice.Domain.FollowUps;
using CoachOffice.UseCases;
using CoachOffice.UseCases.FollowUps.Wordings;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;
using NodaTime;

namespace CoachOffice.Web.Features.Settings;

/// <summary>One kind of message: whether, when, by itself or not, and its words with a look at them and a try-out.</summary>
[Authorize(Policy = OfficePolicies.Own)]
public sealed class MessageKindModel(ReadRules read, ChangeRule change, PreviewLetter preview, SendTestLetter test, PracticeClock clock) : OfficePage
{
    [BindProperty(SupportsGet = true)]
    public string Kind { get; set; } = "";

    [BindProperty]
    public MessageKindFields Input { get; set; } = new();

    public RuleView View { get; private set; } = null!;

    public IReadOnlyList<LetterPart> Parts { get; private set; } = [];

    public IReadOnlyList<PreviewedLetter> Previews { get; private set; } = [];

    public DateTimeZone Zone { get; private set; } = DateTimeZone.Utc;

    private LetterWords Typed => new((Input.Subject ?? "").Trim(), (Input.Body ?? "").ReplaceLineEndings("\n"));

    public async Task<IActionResult> OnGetAsync()
    {
        if (await Load() is { } gone) return gone;
        Previews = preview.Of(View.Rule.Kind, View.IsOwn ? View.Words : null);
        Fill(words: true);
        return Page();
    }

    public async Task<IActionResult> OnPostRuleAsync()
    {
        if (await Load() is { } gone) return gone;
        var traits = View.Traits;
        var timing = traits.Unit == TimingUnit.None ? 0 : int.TryParse(Input.Timing?.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : -1;
        var details = new MessageRuleDetails(Input.IsOn || !traits.MayBeOff, timing, Input.WaitsForCoach && traits.MayWait);
        var saved = await change.To(View.Rule.Kind, Input.Version, details, Actor);
        if (saved.Succeeded) return Done(Here, "Saved. It holds for what waits already, too.");
        Fill(words: true, rule: false);
        return Refuse(saved.Refusals);
    }

    public async Task<IActionResult> OnPostWordsAsync() => await After(async () => await change.Words(View.Rule.Kind, Input.Version, Typed, Actor), "Saved. Letters go in these words from now on.");

    public async Task<IActionResult> OnPostShippedAsync() => await After(async () => await change.ShippedWords(View.Rule.Kind, Input.Version, Actor), "The shipped words are back. Yours are kept below.");

    public async Task<IActionResult> OnPostLookAsync([FromServices] CheckWording check)
    {
        ArgumentNullException.ThrowIfNull(check);
        if (await Load() is { } gone) return gone;
        Fill(words: false);
        var against = check.Of(View.Rule.Kind, Typed);
        if (against.Count > 0) return Refuse(against);
        Previews = preview.Of(View.Rule.Kind, Typed);
        return Page();
    }

    public async Task<IActionResult> OnPostTryAsync()
    {
        if (await Load() is { } gone) return gone;
        Fill(words: false);
        var sent = await test.Now(View.Rule.Kind, Typed, Actor);
        if (!sent.TryGet(out var where)) return Refuse(sent.Refusals);
        Previews = preview.Of(View.Rule.Kind, Typed);
        ViewData["Said"] = where;
        return Page();
    }

    private string Here => $"{MessagesModel.Address}/{Kind}";

    private async Task<IActionResult> After(Func<Task<Outcome<int>>> deed, string sentence)
    {
        if (await Load() is { } gone) return gone;
        var done = await deed();
        if (done.Succeeded) return Done(Here, sentence);
        Fill(words: false);
        return Refuse(done.Refusals);
    }

    private void Fill(bool words, bool rule = true)
    {
        if (rule) (Input.Version, Input.IsOn, Input.WaitsForCoach, Input.Timing) = (View.Rule.Version, View.Rule.IsOn, View.Rule.WaitsForCoach, View.Rule.Timing.ToString(CultureInfo.InvariantCulture));
        if (words) (Input.Subject, Input.Body) = (View.Words.Subject, View.Words.Body);
    }

    private async Task<IActionResult?> Load()
    {
        if (!Terms.TryParse<Domain.FollowUps.MessageKind>(Kind, out var kind)) return NotFound();
        var found = await read.One(kind, Actor);
        if (!found.TryGet(out var view)) return Refuse(found.Refusals);
        (View, Parts, Zone) = (view, LetterParts.Known(kind), await clock.Zone());
        return null;
    }
}

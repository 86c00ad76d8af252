using CoachOffice.Domain;
using CoachOffice.UseCases;
using CoachOffice.UseCases.FollowUps;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Security;
using CoachOffice.Web.Shell.Wording;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;
using NodaTime;

namespace CoachOffice.Web.Features.FollowUps;

[Authorize(OfficePolicies.Teach)]
public sealed class IndexModel(ListMessages list, SkipMessage skip, SendMessageNow send, MoveMessage move, PracticeClock clock) : OfficePage
{
    internal MessageList Messages { get; private set; } = null!;

    internal MessageFilter Filter { get; private set; }

    internal DateTimeZone Zone { get; private set; } = DateTimeZone.Utc;

    internal LocalDate Today { get; private set; }

    [BindProperty(SupportsGet = true)]
    public string? Show { get; set; }

    /// <summary>From 1. Not "page": Razor Pages keeps that word for itself.</summary>
    [BindProperty(SupportsGet = true)]
    public int? Part { get; set; }

    [BindProperty]
    public Guid Id { get; set; }

    [BindProperty]
    public string? Why { get; set; }

    [BindProperty]
    public string? Day { get; set; }

    public async Task<IActionResult> OnGetAsync() => await Load() ?? Page();

    public async Task<IActionResult> OnPostSkipAsync() => await After(await skip.Now(Id, Why ?? "", Actor), "It will not be sent.");

    public async Task<IActionResult> OnPostSendAsync() => await After(await send.Now(Id, Actor), "It goes with the next sweep, within a minute.");

    public async Task<IActionResult> OnPostArrivedAsync([FromServices] MessageArrived arrived)
    {
        ArgumentNullException.ThrowIfNull(arrived);
        return await After(await arrived.Say(Id, Actor), "It counts as sent.");
    }

    public async Task<IActionResult> OnPostMoveAsync() => DayEntry.Read(Day) is { } day
        ? await After(await move.To(Id, day, null, Actor), $"It is due on {DayEntry.Said(day)} now.")
        : await After(DayEntry.Refusal(nameof(Day)), "");

    private async Task<IActionResult> After(Outcome<Guid> outcome, string sentence) =>
        outcome.Succeeded ? Done($"/follow-ups?show={Terms.Of(Chosen)}", sentence) : await Load() ?? Refuse(outcome.Refusals, "");

    // What stands in the address may be anything; only a filter of ours goes on.
    private MessageFilter Chosen => Terms.TryParse<MessageFilter>(Show, out var filter) ? filter : MessageFilter.Open;

    private async Task<IActionResult?> Load()
    {
        Filter = Chosen;
        Show = Terms.Of(Filter);
        var found = await list.Now(Filter, Math.Max(1, Part ?? 1), Actor);
        if (!found.TryGet(out var messages)) return Refuse(found.Refusals, "");
        (Messages, Zone, Today) = (messages, await clock.Zone(), await clock.Today());
        return null;
    }
}

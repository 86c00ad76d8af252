using CoachOffice.Domain;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases;
using CoachOffice.UseCases.FollowUps;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Security;
using CoachOffice.Web.Shell.Wording;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;
using NodaTime;

namespace CoachOffice.Web.Features.FollowUps;

/// <summary>What will go to whom and why; what needs a person stands on top.</summary>
[Authorize(OfficePolicies.Teach)]
public sealed class IndexModel(ListMessages list, ReadMessageDays days, MessageVerbs verbs, PracticeClock clock) : OfficePage
{
    /// <summary>So many of what needs a person at first sight.</summary>
    public const int AtFirst = 10;

    internal MessageList Messages { get; private set; } = null!;

    internal MessageList? Stuck { get; private set; }

    internal MessageList? Waiting { get; private set; }

    internal IReadOnlyList<MessageDay> Days { get; private set; } = [];

    internal MessageFilter Filter { get; private set; }

    internal MessageChoice Choice { get; private set; } = MessageChoice.Everything;

    internal DateTimeZone Zone { get; private set; } = DateTimeZone.Utc;

    internal LocalDate Today { get; private set; }

    internal bool MayOwn => Actor.MayOwn;

    [BindProperty(SupportsGet = true)]
    public string? Show { get; set; }

    [BindProperty(SupportsGet = true)]
    public string? Kind { get; set; }

    [BindProperty(SupportsGet = true)]
    public Guid? Of { get; set; }

    [BindProperty(SupportsGet = true)]
    public string? On { get; set; }

    /// <summary>From 1. Not "page": Razor Pages keeps that word for itself.</summary>
    [BindProperty(SupportsGet = true)]
    public int? Part { get; set; }

    [BindProperty]
    public Guid Id { get; set; }

    [BindProperty]
    public string? Why { get; set; }

    [BindProperty]
    public string? Day { get; set; }

    /// <summary>The same list again, as the query of an address.</summary>
    internal string Back => BackTo(Filter);

    public async Task<IActionResult> OnGetAsync() => await Load() ?? Page();

    public async Task<IActionResult> OnPostSkipAsync() => await After(await verbs.Skip(Id, Why, Actor), "It will not be sent.");

    public async Task<IActionResult> OnPostSendAsync() => await After(await verbs.Send(Id, Actor), "It goes with the next sweep, within a minute.");

    public async Task<IActionResult> OnPostApproveAsync() => await After(await verbs.Approve(Id, Actor), "It goes when it is due.");

    public async Task<IActionResult> OnPostArrivedAsync() => await After(await verbs.Arrived(Id, Actor), "It counts as sent.");

    public async Task<IActionResult> OnPostApproveAllAsync()
    {
        Choose();
        var approved = await verbs.ApproveAll(Choice.Kind, Actor);
        return approved.TryGet(out var count) ? Done($"/follow-ups?{BackTo(MessageFilter.Open)}", count == 1 ? "One goes when it is due." : $"{count} go when they are due.") : await Load() ?? Refuse(approved.Refusals, "");
    }

    public async Task<IActionResult> OnPostMoveAsync() => DayEntry.Read(Day) is { } day
        ? await After(await verbs.Move(Id, day, Actor), $"It is due on {DayEntry.Said(day)} now.")
        : await After(DayEntry.Refusal(nameof(Day)), "");

    internal MessageCard Card(MessageRow row) => new(row, Zone, Today, Back);

    internal string BackTo(MessageFilter filter) => FollowUpQuery.Of(filter, Choice);

    internal string BackOn(LocalDate day) => FollowUpQuery.Of(MessageFilter.Open, Choice with { Day = day });

    private async Task<IActionResult> After(Outcome<Guid> outcome, string sentence)
    {
        Choose();
        return outcome.Succeeded ? Done($"/follow-ups?{Back}", sentence) : await Load() ?? Refuse(outcome.Refusals, "");
    }

    // What stands in the address may be anything; only what is ours goes on.
    private void Choose()
    {
        Filter = Terms.TryParse<MessageFilter>(Show, out var filter) ? filter : MessageFilter.Open;
        Show = Terms.Of(Filter);
        Choice = new MessageChoice(Terms.TryParse<MessageKind>(Kind, out var kind) ? kind : null, Of is { } student && student != Guid.Empty ? StudentId.From(student) : null, DayEntry.Read(On));
    }

    private async Task<IActionResult?> Load()
    {
        Choose();
        var found = await list.Now(Filter, Math.Max(1, Part ?? 1), Actor, Choice);
        if (!found.TryGet(out var messages)) return Refuse(found.Refusals, "");
        (Messages, Zone, Today) = (messages, await clock.Zone(), await clock.Today());
        if (Filter != MessageFilter.Open) return null;
        var whole = Choice with { Day = null };
        Stuck = messages.NeedAttention > 0 ? (await list.Now(MessageFilter.NeedsAttention, 1, Actor, whole)).Value : null;
        Waiting = messages.Awaiting > 0 ? (await list.Now(MessageFilter.AwaitsApproval, 1, Actor, whole)).Value : null;
        Days = (await days.Ahead(Choice, Actor)).Value;
        return null;
    }
}

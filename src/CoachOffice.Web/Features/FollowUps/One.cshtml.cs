using CoachOffice.Domain;
using CoachOffice.Domain.FollowUps;
using CoachOffice.UseCases;
using CoachOffice.UseCases.FollowUps;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Security;
using CoachOffice.Web.Shell.Wording;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;
using NodaTime;

namespace CoachOffice.Web.Features.FollowUps;

/// <summary>One message: when it goes, in which words, or that it does not.</summary>
[Authorize(OfficePolicies.Teach)]
public sealed class OneModel(ReadOneMessage read, SayInOwnWords say, MessageVerbs verbs, PracticeClock clock) : OfficePage
{
    [BindProperty(SupportsGet = true)]
    public Guid Id { get; set; }

    [BindProperty]
    public string? Subject { get; set; }

    [BindProperty]
    public string? Body { get; set; }

    [BindProperty]
    public string? Day { get; set; }

    [BindProperty]
    public string? Time { get; set; }

    [BindProperty]
    public string? Why { get; set; }

    internal OneMessage Message { get; private set; } = null!;

    internal DateTimeZone Zone { get; private set; } = DateTimeZone.Utc;

    internal bool IsOpen => Message.Row.State is not (MessageState.Sent or MessageState.Skipped);

    public async Task<IActionResult> OnGetAsync() => await Load() ?? Page();

    public async Task<IActionResult> OnPostWordsAsync() => await After(await say.To(Id, new LetterWords((Subject ?? "").Trim(), Body ?? ""), Actor), "This one goes in these words.");

    public async Task<IActionResult> OnPostPlainAsync() => await After(await say.To(Id, null, Actor), "It goes in the words of its kind.");

    public async Task<IActionResult> OnPostSendAsync() => await After(await verbs.Send(Id, Actor), "It goes with the next sweep, within a minute.");

    public async Task<IActionResult> OnPostApproveAsync() => await After(await verbs.Approve(Id, Actor), "It goes when it is due.");

    public async Task<IActionResult> OnPostSkipAsync() => await After(await verbs.Skip(Id, Why, Actor), "It will not be sent.");

    public async Task<IActionResult> OnPostMoveAsync()
    {
        if (DayEntry.Read(Day) is not { } day) return await After(DayEntry.Refusal(nameof(Day)), "");
        if (!string.IsNullOrWhiteSpace(Time) && TimeEntry.Read(Time) is null) return await After(TimeEntry.Refusal(nameof(Time)), "");
        return await After(await verbs.Move(Id, day, Actor, TimeEntry.Read(Time)), $"It is due on {DayEntry.Said(day)} now.");
    }

    private async Task<IActionResult> After(Outcome<Guid> outcome, string sentence)
    {
        if (outcome.Succeeded) return Done($"/follow-ups/{Id}", sentence);
        return await Load() ?? Refuse(outcome.Refusals, "");
    }

    private async Task<IActionResult?> Load()
    {
        var found = await read.Now(Id, Actor);
        if (!found.TryGet(out var message)) return Refuse(found.Refusals, "");
        (Message, Zone) = (message, await clock.Zone());
        var due = message.Row.DueAt.InZone(Zone);
        (Subject, Body) = (Subject ?? message.Words.Subject, Body ?? message.Words.Body);
        (Day, Time) = (Day ?? DayEntry.Text(due.Date), Time ?? TimeEntry.Text(due.TimeOfDay));
        return null;
    }
}

using CoachOffice.UseCases;
using CoachOffice.UseCases.Bookings.Calendars.Feeds;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;
using NodaTime;

namespace CoachOffice.Web.Features.Bookings.Calendars;

/// <summary>A coach's own calendar address: made, renewed, ended.</summary>
[Authorize(OfficePolicies.Teach)]
public sealed class FeedModel(ReadCoachFeed read, MakeCoachFeed make, EndCoachFeed end, PracticeClock clock) : OfficePage
{
    internal FeedState? State { get; private set; }

    internal DateTimeZone Zone { get; private set; } = DateTimeZone.Utc;

    /// <summary>Shown once, right after it was made.</summary>
    internal Uri? Address { get; private set; }

    /// <summary>The same address as programs ask to be handed it.</summary>
    internal string OpensIn => Address is null ? "" : $"webcal://{Address.Authority}{Address.AbsolutePath}";

    public async Task<IActionResult> OnGetAsync() => await Load();

    public async Task<IActionResult> OnPostMakeAsync()
    {
        var made = await make.For(Actor);
        if (!made.TryGet(out var address)) return Refuse(made.Refusals, "");
        Address = address;
        return await Load();
    }

    public async Task<IActionResult> OnPostEndAsync()
    {
        var ended = await end.Of(Actor);
        return ended.Succeeded ? Done("/calendar/feed", "The address has ended. Programs that follow it get nothing any more.") : Refuse(ended.Refusals, "");
    }

    private async Task<IActionResult> Load()
    {
        var found = await read.Of(Actor);
        if (!found.TryGet(out var states)) return Refuse(found.Refusals, "");
        (State, Zone) = (states.Count > 0 ? states[0] : null, await clock.Zone());
        return Page();
    }
}

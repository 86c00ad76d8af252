using CoachOffice.UseCases;
using CoachOffice.UseCases.Bookings.Calendars.Feeds;
using Microsoft.AspNetCore.Mvc;
using NodaTime;

namespace CoachOffice.Web.Features.Bookings.Private;

/// <summary>A student's own calendar address: made, renewed, ended.</summary>
public sealed class MyCalendarModel(ReadStudentFeed read, MakeStudentFeed make, EndStudentFeed end, PracticeClock clock) : VisitPage
{
    internal FeedState? State { get; private set; }

    internal DateTimeZone Zone { get; private set; } = DateTimeZone.Utc;

    /// <summary>Shown once, right after it was made.</summary>
    internal Uri? Address { get; private set; }

    /// <summary>The same address as programs ask to be handed it.</summary>
    internal string OpensIn => Address is null ? "" : $"webcal://{Address.Authority}{Address.AbsolutePath}";

    public Task OnGetAsync() => Load();

    public async Task OnPostMakeAsync()
    {
        Address = await make.For(Pass);
        await Load();
    }

    public async Task<IActionResult> OnPostEndAsync()
    {
        await end.Of(Pass);
        return LocalRedirect("/my-lessons/calendar");
    }

    private async Task Load() => (State, Zone) = (await read.Of(Pass), await clock.Zone());
}

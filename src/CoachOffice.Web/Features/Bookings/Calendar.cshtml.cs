using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases;
using CoachOffice.UseCases.Bookings;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Wording;
using Microsoft.AspNetCore.Mvc;
using NodaTime;

namespace CoachOffice.Web.Features.Bookings;

/// <summary>A week or a day of the calendar; bookings are moved here by dragging, keys or their own page.</summary>
public sealed class CalendarModel(ReadCalendar read, MoveBooking move, PracticeClock clock) : OfficePage
{
    private const string DayView = "day";

    [BindProperty(SupportsGet = true)]
    public string? Day { get; set; }

    /// <summary>"week" or "day".</summary>
    [BindProperty(SupportsGet = true, Name = "view")]
    public string? Shown { get; set; }

    /// <summary>A coach's id, or "all".</summary>
    [BindProperty(SupportsGet = true)]
    public string? Coach { get; set; }

    internal CalendarView View { get; private set; } = null!;

    internal CalendarDrawing Drawing { get; private set; } = null!;

    internal LocalDate At { get; private set; }

    internal AccountId? CoachId { get; private set; }

    internal bool IsDay => Shown == DayView;

    internal string Heading => IsDay ? DayWords.Long(At) : $"{DayEntry.Short(View.Wish.First)} to {DayWords.Of(View.Wish.First.PlusDays(6))}";

    internal int Step => IsDay ? 1 : 7;

    internal string Here => CalendarLinks.Of(At, IsDay ? DayView : "week", CoachId);

    public async Task<IActionResult> OnGetAsync()
    {
        await Load();
        return Page();
    }

    /// <summary>A booking dropped elsewhere; the page it came from is shown again, with a way back.</summary>
    public async Task<IActionResult> OnPostMoveAsync(Guid id, int version, MoveInput to)
    {
        var before = to.Back();
        var moved = await move.To(BookingId.From(id), version, to.Form(), Actor);
        await Load();
        if (!moved.Succeeded) return Refuse(moved.Refusals, "");
        var undo = before is null ? null : $"{Here}&handler=move&id={id}&version={version + 1}&{before}";
        return Done(Here, to.Said(), undo);
    }

    private async Task Load()
    {
        At = DayEntry.Read(Day) ?? await clock.Today();
        Shown = Shown == DayView || (Shown is null && !Actor.MayTeach) ? DayView : "week";
        CoachId = Guid.TryParse(Coach, out var one) && one != Guid.Empty ? AccountId.From(one) : Coach is null && Actor.MayTeach ? Actor.Account : null;
        var first = IsDay ? At : At.PlusDays(1 - (int)At.DayOfWeek);
        View = await read.For(new CalendarWish(first, Step, CoachId));
        Drawing = CalendarDrawings.Of(View);
    }
}

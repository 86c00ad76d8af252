using CoachOffice.Domain;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Bookings.Visits;
using CoachOffice.Web.Shell;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Bookings.Private;

/// <summary>One lesson of a student's own: to book while it is kept, to move or cancel while it comes.</summary>
public sealed class LessonModel(ReadVisitor visitor, ReadVisits visits, ConfirmVisit confirm, CancelVisit cancel) : LessonsPage(visitor)
{
    [BindProperty(SupportsGet = true)]
    public Guid Id { get; set; }

    public VisitView Visit { get; private set; } = null!;

    private BookingId Booking => BookingId.From(Id);

    public async Task<IActionResult> OnGetAsync() => await Look() ? Page() : NotFound();

    public async Task<IActionResult> OnPostConfirmAsync()
    {
        var confirmed = await confirm.Of(Booking, Pass);
        if (!await Look()) return NotFound();
        return confirmed.Succeeded ? Done(OfficeLinks.MyLesson(Booking), "Booked. If the practice has your mail address, a message with the details is on its way.") : Refuse(confirmed.Refusals);
    }

    public async Task<IActionResult> OnPostCancelAsync(bool late)
    {
        if (!await Look()) return NotFound();
        var wasHeld = Visit.Status is SeatStatus.Held or SeatStatus.Lapsed;
        var cancelled = await cancel.Of(Booking, late, Pass);
        if (cancelled.Succeeded) return Done("/my-lessons", wasHeld ? "It is let go. Nothing was booked." : "The lesson is cancelled.");
        return await Look() ? Refuse(cancelled.Refusals) : NotFound();
    }

    private async Task<bool> Look()
    {
        await Greet();
        if (await visits.Of(Booking, Pass) is not { } visit) return false;
        Visit = visit;
        return true;
    }
}
